import manifest from "../package.json";

/** Version of this program, as entries and cards name it. */
export const version: string = manifest.version;
