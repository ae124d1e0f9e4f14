package body

import "fmt"

const (
	tableMoisture   = 0.12 // at which the table of woods is given
	fibreSaturation = 0.30 // at which the rule of DensityAt has the wood fully swollen
)

// A MoistureError reports a moisture at which the density of a wood is not known.
type MoistureError struct {
	Moisture float64 // as a fraction of the ovendry weight
}

func (e *MoistureError) Error() string {
	return fmt.Sprintf("body: moisture is a fraction from 0 to 0.30; %g is not. For example: 0.08", e.Moisture)
}

// DensityAt returns the density (kg/m³) of the wood with its water at a moisture
// given as a fraction of the ovendry weight, 0 to 0.30, ends included; outside it
// the error is a [*MoistureError]. At 0.12 it is Density.
//
// The Wood Handbook, chapter 4, finds the specific gravity at 12 % from that of the
// green volume, Gb; here its rule is taken at any moisture M,
//
//	G(M) = Gb/(1 − 0.265·Gb·(1 − M/0.30)),   density = 1000·G(M)·(1 + M) kg/m³
//
// so that 1/G(M) = 1/G(0.12) + 0.265·(M − 0.12)/0.30 (derived here by taking Gb out).
// On the woods of which both gravities are printed the rule is off by −9 to +7 %
// between green and 12 %, and so by about a third of that between 12 and 6 %.
func (w Wood) DensityAt(moisture float64) (float64, error) {
	if !(moisture >= 0 && moisture <= fibreSaturation) { // so that NaN is outside too
		return 0, &MoistureError{moisture}
	}
	if moisture == tableMoisture {
		return w.Density, nil
	}
	swelling := 1 + 0.265*w.SpecificGravity*(moisture-tableMoisture)/fibreSaturation
	return w.Density * (1 + moisture) / (1 + tableMoisture) / swelling, nil
}
