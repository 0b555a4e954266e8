// npm run bench: speed in one run, side by side with outside peers.
import { attempt, prepare, tool } from "./prepare.mjs";

prepare({ app: true });
if (tool("tsc", ["-b", "bench"]) !== 0) process.exit(1);
process.exitCode = attempt("node", ["bench/dist/bench/run.js", ...process.argv.slice(2)]);
