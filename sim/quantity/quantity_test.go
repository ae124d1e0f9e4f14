package quantity

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"
)

// TestParse holds each way of writing a length; what each means was worked out by hand,
// in inches.
func TestParse(t *testing.T) {
	for _, tt := range []struct {
		text   string
		system System
		inches float64
	}{
		{"17 1/2", Inch, 17.5}, {"17-1/2", Inch, 17.5}, {"17 - 1/2", Inch, 17.5}, {"17½", Inch, 17.5}, {"17 ½", Inch, 17.5},
		{"½", Inch, 0.5}, {"-3/4", Inch, -0.75}, {"−17 1/2", Inch, -17.5}, {"+3", Inch, 3}, {".5", Inch, 0.5}, {"17.", Inch, 17},
		{"17 1/2 in", Inch, 17.5}, {"17in", Inch, 17}, {`17"`, Inch, 17}, {"17″", Inch, 17}, {"17”", Inch, 17},
		{"17''", Inch, 17}, {"17 INCHES", Inch, 17},
		{"3 ft 6 in", Inch, 42}, {"3' 6", Inch, 42}, {`3' 6"`, Inch, 42}, {`3'6-1/2"`, Inch, 42.5}, {"3’ 6", Inch, 42},
		{"5 ft 10 1/2 in", Inch, 70.5}, {"-3' 6", Inch, -42}, {"6'", Inch, 72}, {"2 feet", Inch, 24},
		{"25.4 mm", Inch, 1}, {"2.54cm", Inch, 1}, {"0.0254 m", Inch, 1}, {"2.54e-2 m", Inch, 1}, {"25,4", Metric, 1},
		{"25.4", Metric, 1}, {"1 in", Metric, 1}, {"17\u00a01/2", Inch, 17.5}, {"17 1⁄2", Inch, 17.5},
	} {
		got, err := Parse(tt.text, Length, tt.system)
		if want := tt.inches * 0.0254; err != nil || math.Abs(got-want) > 1e-15*math.Abs(want) {
			t.Errorf("Parse(%q) = %v, %v; want %v", tt.text, got, err, want)
		}
	}
	for _, tt := range []struct {
		text   string
		kind   Kind
		system System
		want   float64
	}{
		{"180", Mass, Inch, 180 * 0.45359237}, {"26 lbs", Mass, Metric, 26 * 0.45359237}, {"500 g", Mass, Inch, 0.5}, {"82", Mass, Metric, 82},
		{"15", Angle, Inch, 15 * math.Pi / 180}, {"6 1/2 degrees", Angle, Inch, 6.5 * math.Pi / 180},
		{"15°", Angle, Metric, 15 * math.Pi / 180}, {"0.3 rad", Angle, Inch, 0.3},
		{"2.1 kg m2", Inertia, Inch, 2.1}, {"2.1 kg·m²", Inertia, Inch, 2.1}, {"2.1 kg m^2", Inertia, Inch, 2.1},
		{"100 lb in2", Inertia, Metric, 100 * 0.45359237 * 0.0254 * 0.0254},
		{"100", Inertia, Inch, 100 * 0.45359237 * 0.0254 * 0.0254},
		{"1 lb ft2", Inertia, Inch, 0.45359237 * 0.3048 * 0.3048},
		{"5", Force, Inch, 5 * 4.4482216152605}, {"5 lb", Force, Inch, 5 * 4.4482216152605}, {"5 N", Force, Inch, 5}, {"5", Force, Metric, 5},
		{"2.5 N m", Moment, Inch, 2.5}, {"2 s", Time, Inch, 2}, {"35 %", Ratio, Inch, 0.35}, {"0.35", Ratio, Metric, 0.35},
		{"4", Count, Inch, 4}, {"9.81 m/s2", Gravity, Inch, 9.81}, {"650 kg/m3", Density, Inch, 650},
		{"42 lb/ft3", Density, Inch, 42 * 0.45359237 / (0.3048 * 0.3048 * 0.3048)},
	} {
		got, err := Parse(tt.text, tt.kind, tt.system)
		if err != nil || math.Abs(got-tt.want) > 1e-15*math.Abs(tt.want) {
			t.Errorf("Parse(%q) = %v, %v; want %v", tt.text, got, err, tt.want)
		}
	}
}

// TestParseSaysWhatIsWrong holds the sentence for each sort of mistake.
func TestParseSaysWhatIsWrong(t *testing.T) {
	for text, says := range map[string]string{
		"": "there is none", " ": "there is none", "wood": "a number with a unit", "17 lb": "lb is the unit of a weight",
		"17 furlongs": `"furlongs" is no unit`,
		"3/0":         "nothing can be parted into 0", "17,5": "the decimal sign is a point (17.5)", "1e308": "at most 100 km",
		"1e999": "of a size", "nan": "a number", "inf": "a number",
		"17 1/2 1/2": "a number with a unit", "1_000": "one number", "0x10": "one number", "1//2": "one number",
		"1/2/3": "one number", "- 3": "a number", "17 ft 3 lb": "feet and then inches",
		"3 ft -6 in": "feet and then inches", "1 in 2 ft": "feet and then inches", "1 in 2 in 3 in": "a number",
		"100001 m": "at most 100 km",
	} {
		got, err := Parse(text, Length, Inch)
		var wrong *Error
		if !errors.As(err, &wrong) || !strings.Contains(err.Error(), says) || got != 0 || !strings.Contains(err.Error(), "For example: ") {
			t.Errorf("Parse(%q): %v, %v; want it to say %q", text, got, err, says)
		}
	}
	endless := strings.Repeat("1", 1<<16)
	if _, err := Parse(endless, Length, Inch); err == nil || !strings.Contains(err.Error(), "at most 100 letters") {
		t.Errorf("a number without end: %v", err)
	}
	if typed, ok := Repair(endless, Inch); ok {
		t.Errorf("a number without end is mended as %.40s", typed)
	}
	if _, err := FromNumber(math.NaN(), Mass, Inch); err == nil {
		t.Error("NaN is a weight")
	}
	if _, err := Parse("361", Angle, Inch); err == nil || !strings.Contains(err.Error(), "360 degrees") {
		t.Errorf("361 degrees: %v", err)
	}
}

// TestBitForBit: what a program wrote takes one conversion and one multiplication.
func TestBitForBit(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 1))
	for range 2000 {
		x := math.Ldexp(rng.Float64()-0.5, rng.IntN(30)-20)
		text := strconv.FormatFloat(x, 'g', -1, 64)
		for suffix, factor := range map[string]float64{" m": 1, " in": 0.0254, " mm": 0.001, "": 0.0254} {
			if got, err := Parse(text+suffix, Length, Inch); err != nil || got != x*factor {
				t.Fatalf("Parse(%q) = %v, %v; want %v", text+suffix, got, err, x*factor)
			}
		}
		if got, err := FromNumber(x, Length, Metric); err != nil || got != x*0.001 {
			t.Fatalf("FromNumber(%v) = %v, %v", x, got, err)
		}
	}
}

// TestRepair holds what to type instead of each unquoted spelling, and that it reads.
func TestRepair(t *testing.T) {
	for raw, want := range map[string]string{
		`17-1/2`: `"17-1/2"`, `17 1/2`: `"17 1/2"`, `17"`: `"17 in"`, `17 in`: `"17 in"`, `17,5`: `"17.5"`,
		`3' 6`: `"3 ft 6 in"`, `"3' 6""`: `"3 ft 6 in"`,
		`“17 1/2”`: `"17 1/2"`, `17½`: `"17 1/2"`, `'17 1/2`: `"17 1/2"`, `17 1/2" # wide`: `"17 1/2 in"`,
		`“3’ 6”`: `"3 ft 6 in"`, `180 lb`: `"180 lb"`, `6 1/2 degrees`: `"6 1/2 degrees"`,
	} {
		got, ok := Repair(raw, Inch)
		if !ok || got != want {
			t.Errorf("Repair(%s) = %s, %v; want %s", raw, got, ok, want)
		}
	}
	if got, ok := Repair("17,5", Metric); !ok || got != `"17,5"` {
		t.Errorf("in a metric file: %s, %v", got, ok)
	}
	for _, raw := range []string{"chair", "[1, 2]", "", `"`, "{a = 1}"} {
		if got, ok := Repair(raw, Inch); ok {
			t.Errorf("Repair(%s) = %s", raw, got)
		}
	}
}

// TestShop holds rounding, carrying and signs, by hand.
func TestShop(t *testing.T) {
	const in, deg, lb, lbf = 0.0254, math.Pi / 180, 0.45359237, 4.4482216152605
	for _, tt := range []struct {
		x      float64
		kind   Kind
		system System
		want   string
	}{
		{17.5 * in, Length, Inch, "17 1/2 in"}, {17.96 * in, Length, Inch, "17 15/16 in"},
		{17.97 * in, Length, Inch, "18 in"}, {0.03 * in, Length, Inch, "0 in"}, {-0.03 * in, Length, Inch, "0 in"},
		{-0.75 * in, Length, Inch, "-3/4 in"}, {0.9375 * in, Length, Inch, "15/16 in"},
		{-2.125 * in, Length, Inch, "-2 1/8 in"},
		{0.4446, Length, Metric, "445 mm"}, {-0.0004, Length, Metric, "0 mm"}, {1e5, Length, Metric, "100000000 mm"},
		{6.5 * deg, Angle, Inch, "6 1/2 degrees"}, {6.5 * deg, Angle, Metric, "6.5 degrees"},
		{0.5 * deg, Angle, Inch, "1/2 degree"}, {1.1 * deg, Angle, Inch, "1 degree"},
		{-0.2 * deg, Angle, Metric, "0 degrees"},
		{180.2 * lb, Mass, Inch, "180 lb"}, {3.3 * lb, Mass, Inch, "3 1/4 lb"}, {11.84, Mass, Metric, "11.8 kg"},
		{1.6 * lbf, Force, Inch, "1.6 lb"},
		{1.94 * lbf, Force, Inch, "1.9 lb"}, {1.96 * lbf, Force, Inch, "2 lb"}, {2.6 * lbf, Force, Inch, "2 1/2 lb"},
		{6.94, Force, Metric, "6.9 N"}, {37.6, Force, Metric, "38 N"},
		{2.04, Time, Inch, "2.0 s"}, {0.356, Ratio, Inch, "0.36"},
		{math.NaN(), Length, Inch, "– in"},
	} {
		if got := With(tt.x, tt.kind, tt.system); got != tt.want {
			t.Errorf("With(%v) = %q, want %q", tt.x, got, tt.want)
		}
	}
	if got, want := Round(17.51*in, Length, Inch), 17.5*in; got != want {
		t.Errorf("Round: %v, want %v", got, want)
	}
	if got := Round(math.NaN(), Length, Inch); !math.IsNaN(got) {
		t.Errorf("Round of no number: %v", got)
	}
	if got := Fine(0.5623*in, Length, Inch); got != "0.562" {
		t.Errorf("Fine: %q", got)
	}
}

// TestCompared by hand: thirty-seconds in lowest terms, tenths of a millimetre, and nothing is "-0", as the rise at a low
// point is that comes out a rounding below zero.
func TestCompared(t *testing.T) {
	const in = 0.0254
	for _, tt := range []struct {
		x      float64
		system System
		want   string
	}{
		{3.0 / 32 * in, Inch, "3/32"}, {6.0 / 32 * in, Inch, "3/16"}, {1.5 * in, Inch, "1 1/2"}, {2 * in, Inch, "2"}, {-1e-17, Inch, "0"},
		{0.0008, Metric, "0.8"}, {0.0123, Metric, "12.3"}, {0.012, Metric, "12"}, {-1e-17, Metric, "0"},
	} {
		if got := Compared(tt.x, tt.system); got != tt.want {
			t.Errorf("%v m is %q, want %q", tt.x, got, tt.want)
		}
	}
}

// TestShopReadsBack: what is shown, typed again, is within half a step.
func TestShopReadsBack(t *testing.T) {
	rng := rand.New(rand.NewPCG(2, 2))
	for range 5000 {
		for _, tt := range []struct {
			kind   Kind
			system System
			most   float64
			step   float64
		}{{Length, Inch, 3, 0.0254 / 16}, {Length, Metric, 3, 0.001}, {Angle, Inch, 3, math.Pi / 360},
			{Angle, Metric, 3, math.Pi / 360}, {Mass, Metric, 200, 0.1}, {Time, Inch, 5, 0.1}} {
			x := rng.Float64() * tt.most
			text := With(x, tt.kind, tt.system)
			got, err := Parse(text, tt.kind, tt.system)
			if err != nil || math.Abs(got-x) > tt.step/2*(1+1e-9) {
				t.Fatalf("%v is shown as %q and read as %v, %v", x, text, got, err)
			}
		}
	}
}

// FuzzParse: never a panic, never a number that is none, and what Repair offers reads.
func FuzzParse(f *testing.F) {
	for _, text := range []string{"17-1/2", "3' 6\"", "1e-05 m", "17½", "“17”", "2.1 kg·m²", "-0", "1/0"} {
		f.Add(text, 0, 0)
	}
	f.Fuzz(func(t *testing.T, text string, kind, system int) {
		k, s := Kind(((kind%len(scales))+len(scales))%len(scales)), System(((system%2)+2)%2)
		x, err := Parse(text, k, s)
		if math.IsNaN(x) || math.IsInf(x, 0) || err != nil && (err.Error() == "" || x != 0) {
			t.Errorf("Parse(%q) = %v, %v", text, x, err)
		}
		if typed, ok := Repair(text, s); ok {
			inner, err := strconv.Unquote(typed)
			if err != nil {
				t.Fatalf("Repair(%q) = %s", text, typed)
			}
			reads := false
			for k := range scales {
				_, err := Parse(inner, Kind(k), s)
				reads = reads || err == nil
			}
			if !reads {
				t.Errorf("Repair(%q) = %s, which does not read", text, typed)
			}
		}
	})
}

// FuzzExact: Parse(Exact(x)) is x bit for bit, for every kind.
func FuzzExact(f *testing.F) {
	f.Add(0.1, 0)
	f.Add(-1e-300, 3)
	f.Fuzz(func(t *testing.T, x float64, kind int) {
		k := Kind(((kind % len(scales)) + len(scales)) % len(scales))
		if math.IsNaN(x) || math.Abs(x) > scales[k].most {
			t.Skip("out of range")
		}
		if got, err := Parse(Exact(x, k), k, Metric); err != nil || got != x {
			t.Errorf("Parse(%q) = %v, %v; want %v", Exact(x, k), got, err, x)
		}
	})
}

func ExampleParse() {
	metres, err := Parse("3' 6-1/4\"", Length, Inch)
	fmt.Printf("%.4f m, %v\n", metres, err)
	fmt.Println(With(metres, Length, Inch), "=", With(metres, Length, Metric))
	// Output:
	// 1.0732 m, <nil>
	// 42 1/4 in = 1073 mm
}

// TestReads holds that just inside the two ends numbers read as x does, and just outside they do not.
func TestReads(t *testing.T) {
	for _, kind := range []Kind{Length, Angle, Mass, Inertia, Time, Force, Density, Ratio, Count} {
		for _, system := range []System{Inch, Metric} {
			one := One(kind, system)
			for _, x := range []float64{-7.3, 0, 0.79, 1.2, 4.4, 13.1} {
				least, most := Reads(x*one, kind, system)
				reads := func(y float64) bool { return Shop(y, kind, system) == Shop(x*one, kind, system) }
				if off := 1e-9 * one; !reads(least+off) || !reads(most-off) || reads(least-off) || reads(most+off) {
					t.Errorf("kind %d, system %v: %v reads as %s between %v and %v",
						kind, system, x, Shop(x*one, kind, system), least/one, most/one)
				}
			}
		}
	}
}
