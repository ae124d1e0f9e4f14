// Rockerwright works out how a rocking chair rests and rocks, and how near it is to
// going over, from measures that come off a tape.
//
// Usage:
//
//	rockerwright [command]
//
// With no command it checks a built-in reading chair. For example:
//
//	rockerwright new chair mine.toml
//	rockerwright check mine.toml rocker.radius=40,42,44
package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"runtime"
	"runtime/debug"
	"strings"

	"github.com/spf13/cobra"

	"rockerwright/cmd/internal/design"
)

// The exit codes: all limits hold, one does not, no answer from this input or call.
const (
	allHold  = 0
	oneFails = 1
	noAnswer = 2
)

func main() {
	// little is kept at a time: 100,000 chairs stay under 100 MB, and collecting costs a third of their time
	debug.SetGCPercent(400)
	os.Exit(run(os.Args[1:], os.Stdout, os.Stderr))
}

// run carries out one call and returns its exit code.
func run(args []string, stdout, stderr io.Writer) int {
	root := rootCommand()
	root.SetArgs(append([]string{}, args...)) // never nil, for which cobra takes the process's own
	root.SetOut(stdout)
	root.SetErr(stderr)
	switch err := root.Execute(); {
	case err == nil:
		return allHold
	case errors.Is(err, errFails):
		return oneFails
	default:
		fmt.Fprintln(stderr, err)
		return noAnswer
	}
}

const about = `Rockerwright works out how a rocking chair rests, how long a rock takes and how
near it is to going over, before you cut wood. It takes measures off a tape.

Start here:
  rockerwright                          check the built-in reading chair
  rockerwright new chair mine.toml      write a design file to change
  rockerwright measure                  print sheets to measure on
  rockerwright check mine.toml          check it
  rockerwright check mine.toml rocker.radius=40,42,44
                                        compare three curves side by side
  rockerwright size mine.toml "sitter.height=6 ft 3 in" --like mine.toml
                                        what radius now?
  rockerwright whatif mine.toml         what does each measure do?
  rockerwright layout mine.toml         full-size patterns and a card for the bench
  rockerwright as-built mine.toml       the finished piece beside its drawing
  rockerwright rock mine.toml           push it, drop into it: does it go over?
  rockerwright report mine.toml         all of it on pages to keep with the piece
  rockerwright open mine.toml           move a slider, watch the chair
  rockerwright proof                    see for yourself that the numbers are right

A design file is plain text: open it in any text editor, change a number, save,
check again. Nothing you type here can harm it: commands only read it. What they
write stands where you are; what is there already is kept unless you add --replace.`

func rootCommand() *cobra.Command {
	root := &cobra.Command{
		Use:           "rockerwright",
		Short:         "how a rocking chair rests, rocks and goes over",
		Long:          about,
		Args:          cobra.ArbitraryArgs, // which welcome refuses
		RunE:          welcome,
		Version:       version(),
		SilenceErrors: true,
		SilenceUsage:  true,
	}
	root.SetVersionTemplate(versionLine())
	root.CompletionOptions.DisableDefaultCmd = true
	root.SetHelpCommand(&cobra.Command{
		Use:   "help [command]",
		Short: "explain a command",
		RunE: func(_ *cobra.Command, args []string) error {
			cmd, rest, err := root.Find(args)
			if err != nil || len(rest) > 0 {
				return unknownCommand(strings.Join(args, " "))
			}
			return cmd.Help()
		},
	})
	root.SetFlagErrorFunc(func(cmd *cobra.Command, err error) error {
		return fmt.Errorf("%s: %s. To see what there is: %s --help", cmd.CommandPath(), err, cmd.CommandPath())
	})
	root.AddCommand(newCommand(), measureCommand(), checkCommand(), asBuiltCommand(), sizeCommand(), whatIfCommand(), rockCommand(),
		layoutCommand(), reportCommand(), openCommand(), proofCommand(), versionCommand())
	for _, cmd := range root.Commands() {
		cmd.Flags().SortFlags = cmd.Name() == "proof"
	}
	return root
}

// unknownCommand says what to type instead of a command that there is not.
func unknownCommand(typed string) error {
	if strings.HasSuffix(typed, ".toml") {
		return fmt.Errorf("to check a design, type: rockerwright check %s", design.ShellWord(typed))
	}
	return fmt.Errorf("there is no command %q; there are new, measure, check, as-built, size, whatif, rock, layout, "+
		"report, open, proof, version and help. For example: rockerwright check mine.toml", typed)
}

// version is that of the whole product as the build knows it: the tag of a release, else the commit of
// the checkout, if it is known. A later version only adds fields to the JSON.
func version() string {
	info, known := debug.ReadBuildInfo()
	if known && strings.HasPrefix(info.Main.Version, "v") && !strings.Contains(info.Main.Version, "-") {
		return strings.TrimPrefix(info.Main.Version, "v")
	}
	if known {
		for _, s := range info.Settings {
			if s.Key == "vcs.revision" {
				return "unreleased " + s.Value[:min(len(s.Value), 8)]
			}
		}
	}
	return "unreleased"
}

func versionCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "version",
		Short: "print which version this is",
		RunE: func(cmd *cobra.Command, args []string) error {
			if len(args) > 0 {
				return errors.New("version takes no words behind it; type: rockerwright version")
			}
			_, err := fmt.Fprint(cmd.OutOrStdout(), versionLine())
			return err
		},
	}
}

func versionLine() string {
	return fmt.Sprintf("rockerwright %s (%s, %s/%s)\n", version(), runtime.Version(), runtime.GOOS, runtime.GOARCH)
}
