export { surfaceSpeed } from "./surface-speed.ts";
