package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/sheet"
	"rockerwright/cmd/internal/words"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// changedDesign draws changes of up to four measures of a starting design, as they are typed; it may fit nobody.
func changedDesign(t *testing.T, rng *rand.Rand, f *design.File) []string {
	t.Helper()
	d := &f.Design
	var can []string
	for _, key := range d.Keys() {
		m, field, err := d.Measure(key)
		section, _, _ := strings.Cut(key, ".")
		if made := slices.Contains([]string{"rocker", "seat", "back", "arms", "piece"}, section); err == nil && made && *field > 0 &&
			(m.Kind == quantity.Length || m.Kind == quantity.Angle || m.Kind == quantity.Mass) {
			can = append(can, key)
		}
	}
	var changes []string
	for range 1 + rng.IntN(4) {
		key := can[rng.IntN(len(can))]
		m, field, err := d.Measure(key)
		if err != nil {
			t.Fatal(err)
		}
		x := quantity.Round(*field*(0.5+rng.Float64()), m.Kind, d.Units)
		if x > 0 {
			changes = append(changes, key+"="+quantity.With(x, m.Kind, d.Units))
		}
	}
	return changes
}

// TestWhatIsWrongOnEveryPaper: of 500 designs of every kind the exit code, the findings of --json, the first page, the page of
// --all, the letter, the report and the owner's page tell one thing: whether limits fail, on which loads, and what takes it over.
func TestWhatIsWrongOnEveryPaper(t *testing.T) {
	designs := 500
	if testing.Short() {
		designs = 50
	}
	rng := rand.New(rand.NewPCG(18, 1))
	folder := t.TempDir()
	files := map[string]string{}
	for _, kind := range design.Starts() {
		text, err := design.Start(kind)
		if err != nil {
			t.Fatal(err)
		}
		files[kind] = filepath.Join(folder, kind+".toml")
		if err := os.WriteFile(files[kind], []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	failing, over, asked := 0, 0, 0
	for n := range designs {
		kind := design.Starts()[n%len(design.Starts())]
		f, err := design.Read(files[kind])
		if err != nil {
			t.Fatal(err)
		}
		args := append([]string{"check", files[kind]}, changedDesign(t, rng, f)...)
		print := func(more ...string) (string, int) {
			var out, errs bytes.Buffer
			code := run(append(slices.Clone(args), more...), &out, &errs)
			return out.String(), code
		}
		text, code := print("--json")
		if code == 2 {
			continue // no piece, told alike by whatever is asked
		}
		asked++
		var answer struct {
			Findings []struct{ Level, Who, Load, What, Text string }
			Limits   []struct {
				Name, Load  string
				Holds, Near bool
			}
		}
		if err := json.Unmarshal([]byte(text), &answer); err != nil {
			t.Fatalf("%v: %v", args, err)
		}
		for _, change := range args[2:] {
			key, value, _ := strings.Cut(change, "=")
			if err := f.Set(key, value); err != nil {
				t.Fatal(err)
			}
		}
		a, err := trial.Check(f.Design)
		if err != nil {
			t.Fatal(err)
		}
		kept := words.Keep(a, nil, words.Making{Command: func(key, value string) string { return key + "=" + value }}, nil)
		first, firstCode := print()
		all, allCode := first, firstCode
		if n%5 == 0 {
			all, allCode = print("--all")
		}
		owner := printedBlocks(t, kept.Owner.Blocks)
		report := printedBlocks(t, kept.First)
		fails, falls := 0, 0
		for _, one := range answer.Findings {
			switch one.Level {
			case "does not stand":
				falls++
			case "limit":
				fails++
			case "hazard":
				if one.What == trial.LiftLeft {
					continue
				}
				over++
				who, deed, _ := strings.Cut(strings.ToLower(strings.TrimSuffix(one.Text, ".")), ": ")
				name := strings.Fields(who)[0]
				if strings.HasSuffix(one.Load, "arms behind the head") {
					name = "arms behind the head" // whose they are goes without saying
				}
				for paper, text := range map[string]string{"first page": first, "--all": all, "report": report} {
					if flat := flattened(text); !strings.Contains(flat, deed) || !strings.Contains(flat, name) {
						t.Errorf("%v: the %s does not say %q", args, paper, one.Text)
					}
				}
				if one.What == trial.RockedHard || one.What == trial.EveryDay {
					if !strings.Contains(flattened(owner), deed) {
						t.Errorf("%v: the owner is not told %q", args, one.Text)
					}
				}
			}
		}
		wrong := fails+falls > 0
		if wrong {
			failing++
		}
		said := func(text string) bool {
			text = flattened(text)
			return strings.Contains(text, "fails:") || strings.Contains(text, "does not stand") ||
				strings.Contains(text, "has no rest of its own") || strings.Contains(text, "rests only upside down")
		}
		limits := slices.ContainsFunc(answer.Limits, func(l struct {
			Name, Load  string
			Holds, Near bool
		}) bool {
			return !l.Holds && !l.Near
		})
		if got := [...]bool{code == 1, firstCode == 1, allCode == 1, said(first), said(all), limits, !a.Holds(),
			strings.Contains(flattened(owner), "not all of them keep"), said(report)}; got !=
			[...]bool{wrong, wrong, wrong, wrong, wrong, wrong, wrong, wrong, wrong} {
			t.Errorf("%v: wrong is %v; exit of --json, check, --all; first page, --all, limits, answer, owner, report: %v\n%s",
				args, wrong, got, fmt.Sprint(answer.Findings))
		}
		if n%25 == 0 {
			var letter, errs bytes.Buffer
			run(append([]string{"report", "--text"}, args[1:]...), &letter, &errs)
			if strings.Contains(letter.String(), "FAILS:") != (fails > 0) {
				t.Errorf("%v: the letter tells otherwise: %s", args, letter.String())
			}
		}
	}
	if failing < asked/5 || failing > asked*4/5 || over < asked/5 || asked < designs*4/5 {
		t.Errorf("%d asked, %d fail, %d times something goes over: hardly anything was looked at", asked, failing, over)
	}
	t.Logf("%d asked, %d fail, %d times something goes over", asked, failing, over)
}

// flattened returns a text on one line, in small letters.
func flattened(text string) string { return strings.ToLower(strings.Join(strings.Fields(text), " ")) }

// printedBlocks returns blocks as text on one line.
func printedBlocks(t *testing.T, blocks []sheet.Block) string {
	t.Helper()
	var out bytes.Buffer
	if err := (sheet.Sheet{Blocks: blocks}).Text(&out, true, false); err != nil {
		t.Fatal(err)
	}
	return out.String()
}
