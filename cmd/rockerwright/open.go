package main

import (
	"fmt"
	"io"
	"os"
	"os/exec"
	"os/signal"
	"runtime"
	"syscall"

	"github.com/spf13/cobra"

	"rockerwright/cmd/internal/page"
)

// opening is a call of open.
type opening struct {
	port  int
	quiet bool // no browser is opened
}

func openCommand() *cobra.Command {
	var o opening
	cmd := &cobra.Command{
		Use:   "open [FILE] [section.key=value…]",
		Short: "move a slider, watch the chair: a page on this machine",
		Long: `Opens a page in your browser: the piece drawn to scale with its person, its measures to
slide, type or pull, and beside it what check says, at once. Lean it back and let go:
it rocks at true speed. With no FILE it opens the built-in reading chair.

The page is served to this machine only, and neither it nor this command writes to the
disk: download the design file from the page. It ends with Ctrl-C.`,
		Example: `  rockerwright open mine.toml
  rockerwright open mine.toml rocker.tail=20-1/2
  rockerwright open --port 5000 --no-browser`,
		RunE: o.run,
	}
	f := cmd.Flags()
	f.IntVar(&o.port, "port", page.Port, "serve on this `port` or the next that is free")
	f.BoolVar(&o.quiet, "no-browser", false, "say the address and open nothing")
	return cmd
}

// run serves the page of one design until it is stopped.
func (o *opening) run(cmd *cobra.Command, args []string) error {
	if o.port < 0 || o.port > 65535 {
		return fmt.Errorf("--port is a number up to 65535; %d is not. For example: --port 5000", o.port)
	}
	_, f, err := readOne(args, "open shows one design;")
	if err != nil {
		return err
	}
	// from here on: until the file is read, Ctrl-C ends this as it ends any program, though the file be a
	// pipe that nobody writes to
	ctx, stop := signal.NotifyContext(cmd.Context(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	out := cmd.OutOrStdout()
	door, err := page.Open(o.port)
	if err != nil {
		return err
	}
	where := fmt.Sprintf("Open in a browser on this machine: %s\nCtrl-C ends it.\n", door.URL())
	if o.port != 0 && door.Port != o.port {
		where = fmt.Sprintf("Port %d is taken; this is the next that is free.\n", o.port) + where
	}
	if _, err := io.WriteString(out, where); err != nil {
		return err
	}
	site := page.Site{
		Start:   page.Work{Name: f.Name, Text: f.Text, Changes: append([]string{}, f.Typed...)},
		Version: version(),
	}
	if !o.quiet {
		if err := browse(door.URL()); err != nil {
			if _, err := fmt.Fprintln(out, "No browser could be opened; type the address into one."); err != nil {
				return err
			}
		}
	}
	return door.Serve(ctx, &site)
}

// browse opens an address in the browser of this machine.
func browse(url string) error {
	show := exec.Command("xdg-open", url)
	switch runtime.GOOS {
	case "darwin":
		show = exec.Command("open", url)
	case "windows":
		show = exec.Command("rundll32", "url.dll,FileProtocolHandler", url)
	}
	if err := show.Start(); err != nil {
		return err
	}
	go show.Wait() // a browser that fails says so itself
	return nil
}
