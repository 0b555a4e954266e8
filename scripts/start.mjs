// npm start: installs, builds what changed, and starts the server with the app. Node's own modules only until then.
import { prepare } from "./prepare.mjs";

prepare({ app: true });
const { run } = await import("../cli/dist/src/run.js");
process.exitCode = await run(["serve", "--open", ...process.argv.slice(2)]);
