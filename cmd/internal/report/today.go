package report

import (
	"fmt"
	"os"
	"strconv"
	"time"
)

// Today returns the date of a report: today, or what SOURCE_DATE_EPOCH says, by which the
// same design gives the same file.
func Today() (time.Time, error) {
	epoch := os.Getenv("SOURCE_DATE_EPOCH")
	if epoch == "" {
		return time.Now(), nil
	}
	seconds, err := strconv.ParseInt(epoch, 10, 64)
	if err != nil {
		return time.Time{}, fmt.Errorf("SOURCE_DATE_EPOCH is a number of seconds since 1970; %q is none", epoch)
	}
	return time.Unix(seconds, 0).UTC(), nil
}
