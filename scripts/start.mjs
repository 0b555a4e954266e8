// npm start: installs, builds, and plans the commented example box in the terminal.
import { must, prepare } from "./prepare.mjs";

prepare();
must("node", ["cli/bin/ringwright.js", "plan", "answers/examples/box.yaml", ...process.argv.slice(2)]);
console.log(`
To plan your own box:
  npx ringwright example > my-box.yaml     a box to fill in, with comments
  npx ringwright plan my-box.yaml          its plan
  npx ringwright help                      everything else`);
