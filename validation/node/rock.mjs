// Rocks chairs of one arc in a general-purpose rigid-body engine, and prints the period of
// the first whole rock of each as comma-separated values.
//
// A chair is a circle of the arc's radius on a level floor, its centre of mass below the
// centre of the circle. The engine knows nothing of rockers: it finds the contact, keeps it
// by impulses and integrates by small steps.
import { readFileSync } from "node:fs";
import { World, Vec2, Circle, Edge, Settings } from "planck";

Settings.linearSlop = 1e-6; // how far shapes may sink into one another, m
Settings.velocityThreshold = 0; // nothing bounces
Settings.maxLinearCorrection = 0.2;

const gravity = 9.80665;
const step = 1 / 8000; // s

// chairs: radius, height of the centre of mass over the floor at rest (m), mass (kg),
// inertia about it (kg m2)
const chairs = [
  { name: "reading chair", radius: 1.067, height: 0.61, mass: 93, inertia: 9 },
  { name: "light chair", radius: 0.95, height: 0.55, mass: 60, inertia: 5 },
  { name: "flat rocker", radius: 1.6, height: 0.66, mass: 110, inertia: 12 },
];

function period(chair, degrees) {
  const world = new World({ gravity: new Vec2(0, -gravity), allowSleep: false });
  const floor = world.createBody();
  floor.createFixture(new Edge(new Vec2(-20, 0), new Vec2(20, 0)), { friction: 100, restitution: 0 });
  const angle = (degrees * Math.PI) / 180;
  const body = world.createBody({ type: "dynamic", position: new Vec2(0, chair.radius), angle, allowSleep: false });
  body.createFixture(new Circle(new Vec2(0, 0), chair.radius), { density: 0, friction: 100, restitution: 0 });
  const below = chair.radius - chair.height;
  body.setMassData({ mass: chair.mass, center: new Vec2(0, -below), I: chair.inertia + chair.mass * below * below });
  // turning points, by the angular velocity's change of sign
  let before = 0;
  let turns = 0;
  for (let n = 1; n < 400000; n++) {
    world.step(step, 20, 10);
    const now = body.getAngularVelocity();
    if (n > 2 && before < 0 !== now < 0) {
      turns++;
      if (turns === 2) return (n - 1 + before / (before - now)) * step;
    }
    before = now;
  }
  return NaN;
}

const version = JSON.parse(readFileSync(new URL("./node_modules/planck/package.json", import.meta.url))).version;
console.log(`# planck ${version}, steps of 1/8000 s, ${new Date().toISOString().slice(0, 10)}`);
console.log("chair,radius_m,height_m,mass_kg,inertia_kgm2,release_deg,period_s");
for (const chair of chairs) {
  for (const degrees of [5, 15]) {
    console.log([chair.name, chair.radius, chair.height, chair.mass, chair.inertia, degrees, period(chair, degrees).toFixed(6)].join(","));
  }
}
