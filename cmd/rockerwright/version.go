package main

import (
	"fmt"
	"runtime"

	"github.com/spf13/cobra"
)

// version is that of the whole product; a later one only adds fields to the JSON.
const version = "0.1.0"

func versionCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "version",
		Short: "print which version this is",
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) > 0 {
				return fmt.Errorf("version takes no words behind it; type: rockerwright version")
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, _ []string) error {
			_, err := fmt.Fprint(cmd.OutOrStdout(), versionLine())
			return err
		},
	}
}

func versionLine() string {
	return fmt.Sprintf("rockerwright %s (%s, %s/%s)\n", version, runtime.Version(), runtime.GOOS, runtime.GOARCH)
}
