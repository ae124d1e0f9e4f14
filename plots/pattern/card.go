package pattern

// A Card is a page to read at the bench, in type as large as one page takes.
type Card struct {
	Title  string
	Source string // small, at the right of the title
	Blocks []CardBlock
}

// A CardBlock is a few lines, a table, or a view.
type CardBlock struct {
	Head  string
	Lines []string
	Rows  [][]string // the first and the last column to the left, the others to the right
	Bold  bool       // the first row is a head
	Big   bool       // its lines are twice as large, to be read from afar
	View  *View
}

// A View is a drawing on a card, not at true size: its items are in metres of the paper.
type View struct {
	Items  []Item
	Height float64 // m
}

// The largest and smallest type of a card, by the height of its capitals, m: 18 and 8 1/2 points.
const (
	largestType  = 4.6e-3
	smallestType = 2.15e-3
)

// PrintCards returns cards as PDF, each on one page of the paper where it fits in a type that
// is read at a bench, otherwise on more. The error is an [*Error] for paper that is too small or a roll.
func PrintCards(title string, cards []Card, paper Paper) (Print, error) {
	if err := paper.check(); err != nil {
		return Print{}, err
	}
	if paper.isRoll() {
		return Print{}, &Error{"a bench card is printed on sheets of paper; " + paper.Name + " is a roll"}
	}
	p := newPen(newRuler(), title)
	printed := Print{}
	for _, card := range cards {
		c := setter{pen: p, paper: paper}
		for c.size = c.largest(card); c.size > smallestType && c.pages(card, false) > 1; c.size *= 0.97 {
		}
		printed.Pages += c.pages(card, true)
	}
	printed.Sheets = printed.Pages
	var err error
	printed.PDF, err = p.file()
	return printed, err
}
