package size

import "math"

// zero returns where a function passes from above zero to below between low and high, both
// more than zero, nearest to start. It looks outwards from there by steps of 4 %, and then
// halves, by the secant where that gains more, until two neighbours differ in their last
// digits. Not a number counts as above zero. found is false where it never passes.
func zero(f func(x float64) float64, start, low, high float64) (x float64, found bool) {
	above := func(x float64) (float64, bool) {
		y := f(x)
		return y, !(y <= 0)
	}
	const step = 1.04
	a, b := start, start
	if _, is := above(start); is {
		for {
			if a, b = b, b*step; a >= high {
				return 0, false
			}
			if _, is := above(b); !is {
				break
			}
		}
	} else {
		for {
			if b, a = a, a/step; b <= low {
				return 0, false
			}
			if _, is := above(a); is {
				break
			}
		}
	}
	return narrowed(above, a, b), true
}

// narrowed returns the place between a, where above holds, and b, where it does not.
func narrowed(above func(x float64) (float64, bool), a, b float64) float64 {
	fa, _ := above(a)
	fb, _ := above(b)
	for turn := 0; math.Abs(b-a) > 0x1p-51*math.Abs(a); turn++ {
		x := a + (b-a)*fa/(fa-fb)
		if inside := (x-a)*(x-b) < 0; turn%3 == 2 || !inside {
			if x = a + (b-a)/2; x == a || x == b {
				break
			}
		}
		y, is := above(x)
		if y == 0 {
			return x
		}
		if is {
			a, fa = x, y
		} else {
			b, fb = x, y
		}
	}
	return b
}
