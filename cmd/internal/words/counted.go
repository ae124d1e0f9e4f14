package words

import "strconv"

// counted writes how many there are of a thing, whose name takes an s where there is not one.
func counted(n int, name string) string {
	if n == 1 {
		return "1 " + name
	}
	return strconv.Itoa(n) + " " + name + "s"
}
