#!/usr/bin/env node
import { run } from "../dist/src/run.js";

process.exitCode = await run(process.argv.slice(2));
