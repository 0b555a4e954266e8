export { type Running, type Start, type Started, start } from "./start/serve.ts";
