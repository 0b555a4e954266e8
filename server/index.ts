export { buildServer, operationsOf, type Parts } from "./app.ts";
