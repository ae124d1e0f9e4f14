package check

import (
	"cmp"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/rocker"
	"rockerwright/sim/piece"
)

// seats returns the piece alone and everything that rides on it, load by load, as it is in the seat
// frame: the design's sitters in file order, then the usual others and the hazards; or only what is asked something.
func seats(d piece.Design, people []Somebody, edge rocker.Profile, all bool) ([]Load, error) {
	wanted := func(role piece.Role, posture person.Posture) bool { return all || asked(role, posture) }
	room := 1 + 3*len(d.Sitters)
	for i := range people {
		room += len(people[i].postures)
	}
	list := make([]Load, 1, room)
	list[0] = Load{Name: "empty", Empty: true}
	add := func(name string, role piece.Role, postures []person.Posture, people []Somebody) {
		for _, posture := range postures {
			role := role
			if posture == person.ArmsBehindHead {
				role = piece.Hazard
			}
			if wanted(role, posture) {
				list = append(list, Load{Name: name + ", " + posture.String(), Sitter: name, Role: role, Posture: posture, people: people})
				list[len(list)-1].pose(d, 0)
			}
		}
	}
	var owners []Somebody // who sit together
	next := 0
	for _, s := range sitters(d) {
		switch {
		case s.Lies(d):
			list = append(list, lain(d, s.Name, s.Name, s.Role, infantOf(s), s.Placed.Ahead))
			continue
		case !s.BySizes():
			list = placed(list, s, d.Seat.Meet())
			continue
		case s.Role == piece.Owner && d.Traits().ForTwo:
			owners = append(owners, people[next])
		default:
			add(people[next].Name, people[next].Role, people[next].postures, people[next:next+1])
		}
		next++
	}
	if len(owners) > 0 { // which end makes no difference to the rock
		add("both", piece.Owner, owners[0].postures, []Somebody{owners[0], owners[min(1, len(owners)-1)]})
		if d.Checks(piece.OneAtTheEnd) {
			add(piece.OneAtTheEnd.String(), piece.Owner, []person.Posture{person.AtEase}, owners[:1])
		}
	}
	for i := next; i < len(people); i++ {
		add(people[i].Name, people[i].Role, people[i].postures, people[i:i+1])
	}
	list = append(list, infants(d)...)
	if all && d.Checks(piece.ChildOnTheTail) && d.Seat.SlopeKnown() && len(people) > 0 {
		tail, err := onTheTail(d, edge)
		if err != nil {
			return nil, err
		}
		list = append(list, tail...)
	}
	return slices.DeleteFunc(list, func(l Load) bool { return !l.Empty && !wanted(l.Role, l.Posture) }), nil
}

// pose places the people, the back having given way by an angle, rad.
func (l *Load) pose(d piece.Design, give float64) {
	l.Person, l.Standing, l.off = body.Body{}, 0, body.Body{}
	l.Figures, l.Legs = l.Figures[:0], l.Legs[:0]
	seat := seatOf(d, give)
	for i := range l.people {
		one := &l.people[i].Person
		pose := one.Pose(seat, l.Posture)
		l.Person = body.Join(l.Person, pose.Body)
		l.Standing += pose.Standing
		l.Figures = append(l.Figures, pose.Joints)
		if pose.Legs != (body.Legs{}) {
			l.Legs = append(l.Legs, pose.Legs)
			l.off = body.Join(l.off, one.Pose(seat, person.FeetOff).Body)
		}
	}
	if l.Posture == person.ChildOnLap {
		lap := l.people[0].lap.Pose(l.people[0].Person.Lap(l.Figures[0]), person.FeetOff)
		l.Person, l.off = body.Join(l.Person, lap.Body), body.Join(l.off, lap.Body)
		l.Figures = append(l.Figures, lap.Joints)
	}
}

// onTheTail returns a child of 6 standing at the tail tip of the empty piece, read two
// ways: its weight acts at the feet; it holds on to the back and moves with it.
func onTheTail(d piece.Design, edge rocker.Profile) ([]Load, error) {
	child, err := person.New(person.Given{Age: piece.OnTheTail})
	if err != nil {
		return nil, err
	}
	feet := r2.Add(edge.Tail(), r2.Vec{Y: d.Rocker.DepthOr()})
	rigid, joints := child.Standing(feet)
	light := Load{Name: piece.ChildOnTheTail.String(), Sitter: piece.ChildOnTheTail.String(), Role: piece.Hazard,
		Person: body.Body{Mass: rigid.Mass, Centre: feet}, Figures: []person.Joints{joints}, onRocker: true}
	holding := light
	holding.Name, holding.Person = light.Sitter+", holding the back", rigid
	return []Load{light, holding}, nil
}

// infants returns the infants of a cradle, at birth and at five months: where it rocks
// end to end at the foot, in the middle and at the head, where it rocks sideways in the
// middle and rolled to either side (how far up it lies makes no difference then).
func infants(d piece.Design) []Load {
	var list []Load
	for _, u := range []struct {
		who piece.Usual
		age float64
	}{{piece.Newborn, 0}, {piece.FiveMonths, 5.0 / 12}} {
		if !d.Checks(u.who) || !d.Bed.Drawn() {
			continue
		}
		infant := person.NewInfant(person.Either, u.age, 50)
		room := (d.Bed.Width - 2*infant.Radius) / 2
		places := [...]string{"in the middle", "at the right side", "at the left side"}
		if !d.Directions().Across {
			room = (d.Bed.Length - infant.Length) / 2
			places = [...]string{"in the middle", "at the foot", "at the head"}
		}
		for i, x := range []float64{0, max(0, room), -max(0, room)} {
			list = append(list, lain(d, u.who.String()+", "+places[i], u.who.String(), piece.Owner, infant, x))
		}
	}
	return list
}

// lain returns an infant on the bed, so far ahead of its middle: along its length in a
// cradle that rocks end to end, across it in one that rocks sideways.
func lain(d piece.Design, name, sitter string, role piece.Role, infant person.Infant, ahead float64) Load {
	inertia := infant.Along
	if !d.Directions().Across {
		inertia = infant.Across
	}
	at := r2.Vec{X: ahead, Y: d.Bed.Height + infant.Radius}
	return Load{Name: name, Sitter: sitter, Role: role, Person: body.Body{Mass: infant.Mass, Centre: at, Inertia: inertia}}
}

// infantOf returns the sitter as an infant: by the growth charts for its age, with the weight
// and length that were given.
func infantOf(s piece.Sitter) person.Infant {
	usual := person.NewInfant(s.Person.Sex, s.Person.Age, s.Person.Percentile)
	return person.Capsule(cmp.Or(s.Mass, usual.Mass), cmp.Or(s.Person.Sizes[person.Stature], usual.Length))
}

// leansOn are the postures of who leans on the back.
var leansOn = map[person.Posture]bool{
	person.AtEase: true, person.FeetOff: true, person.ChildOnLap: true, person.ArmsBehindHead: true,
}

// leans reports whether the load bears on a back that gives.
func (l *Load) leans(d piece.Design) bool {
	return leansOn[l.Posture] && d.Back.Braces.Drawn() && len(l.people) > 0
}

// seatOf returns the seat as package person wants it; give is by how much the back gives way, rad.
func seatOf(d piece.Design, give float64) person.Seat {
	s := person.Seat{Meet: d.Seat.Meet(), Backed: d.Back.Drawn(), Recline: d.Back.Recline + give,
		Arms: d.Arms.Height, Cushion: d.Seat.Cushion}
	if d.Seat.SlopeKnown() {
		front := d.Seat.FrontEdge()
		s.Fall, s.Depth = d.Seat.Fall(), d.Seat.Depth
		s.Reach = cmp.Or(d.Arms.Length, piece.ArmReach*d.Seat.Depth) / d.Seat.Depth * (front.X - s.Meet.X)
	}
	return s
}
