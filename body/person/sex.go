package person

// Sex chooses the rows of the tables. The zero Sex is the mean of both.
type Sex int

const (
	Either Sex = iota // the mean of women and men
	Woman
	Man
)

var sexes = [...]string{"", "woman", "man"}

// String returns the word for s in a design file, "" for Either.
func (s Sex) String() string { return sexes[s] }

// mixed returns the value of the sex, or the mean of both.
func (s Sex) mixed(woman, man float64) float64 {
	switch s {
	case Woman:
		return woman
	case Man:
		return man
	}
	return (woman + man) / 2
}
