package size

// Evenness is how even the time of an even-time rocker is.
type Evenness struct{}
