/** Which way imports may look. Each rule is the sentence it enforces; the comment says what to do instead. */
const test = "[.]test[.]tsx?$|^testing/|^app/walks/|/testing/";
const topics = "section|box|rings|lantern|gland|stems|heat|leak|flush|fluid|materials|fit|run-in|cautions|rods|condition";

/** Nothing of ours but its own folder and these. */
const looksOnlyAt = (folder, others) => ({
  from: { path: `^${folder}/`, pathNot: test },
  to: { pathNot: [`^(${[folder, ...others].join("|")})/`, "node_modules", "^[a-z:_]+$"] },
});

export default {
  forbidden: [
    {
      name: "core-stands-alone",
      severity: "error",
      comment: "Core is pure. If it needs a fact, the clock, the disk or the screen, let the caller pass the value in.",
      from: { path: "^core/", pathNot: test },
      to: { pathNot: "^core/" },
    },
    {
      name: "units-sources-workings-know-no-topic",
      severity: "error",
      comment: "These three are the ground that every topic stands on. Move what they need down to them, or pass it in.",
      from: { path: "^core/(units|sources|workings)/", pathNot: test },
      to: { path: "^core/", pathNot: "^core/(units|sources|workings)/" },
    },
    {
      name: "topics-do-not-know-the-plan",
      severity: "error",
      comment: "The plan puts topics together; a topic that needs another imports that topic, never the plan.",
      from: { path: `^core/(${topics})/`, pathNot: test },
      to: { path: "^core/plan/" },
    },
    {
      name: "a-topic-is-entered-through-its-index",
      severity: "error",
      comment: "Export what others need from the topic's index.ts, and import that.",
      from: { path: "^core/([^/]+)/", pathNot: test },
      to: { path: "^core/[^/]+/", pathNot: ["^core/$1/", "^core/[^/]+/index[.]ts$"] },
    },
    {
      name: "data-holds-facts-only",
      severity: "error",
      comment: "Data reads its files and knows the shapes that core declares; calculations belong in core.",
      ...looksOnlyAt("data", ["core"]),
    },
    {
      name: "words-know-only-core",
      severity: "error",
      comment: "Words turn ids and values into sentences. They ask nothing.",
      ...looksOnlyAt("words", ["core"]),
    },
    {
      name: "answers-know-core-and-words",
      severity: "error",
      comment: "Facts are handed to an answer by whoever asks; drawing and printing come after it.",
      ...looksOnlyAt("answers", ["core", "words"]),
    },
    {
      name: "drawings-receive-answers",
      severity: "error",
      comment: "A drawing is given what the core found, and works out no engineering of its own.",
      ...looksOnlyAt("drawings", ["core", "words"]),
    },
    {
      name: "logbook-knows-only-core",
      severity: "error",
      comment: "The logbook adds entries up. Keeping them, sending them and saying them in words come after it: hand in what it needs.",
      ...looksOnlyAt("logbook", ["core"]),
    },
    {
      name: "a-card-is-words-and-drawings",
      severity: "error",
      comment: "A card prints what it is given. Facts, fonts and files are handed in by whoever prints it.",
      ...looksOnlyAt("card", ["core", "words", "drawings"]),
    },
    {
      name: "a-card-is-handed-its-pdf-library",
      severity: "error",
      comment: "The PDF library has a build for Node and one for browsers, and fonts are files: whoever prints hands them in.",
      from: { path: "^card/", pathNot: test },
      to: { path: "node_modules/(pdfkit|fontkit|@fontsource|dejavu-fonts-ttf)" },
    },
    {
      name: "the-card-is-loaded-when-it-is-asked-for",
      severity: "error",
      comment: "Card, PDF library and fonts are heavy: import() them where they are used, so that an answer need not wait for them.",
      from: { path: "^cli/", pathNot: [test, "[.]d[.]ts$"] },
      to: { path: "^card/|node_modules/pdfkit", dynamic: false, dependencyTypesNot: ["type-only"] },
    },
    {
      name: "store-knows-only-the-logbook",
      severity: "error",
      comment: "The store keeps entries and looks into none. What it should know, let the caller hand in; sentences belong in words.",
      ...looksOnlyAt("store", ["core", "logbook"]),
    },
    {
      name: "the-demo-writes-entries-and-asks-answers",
      severity: "error",
      comment: "The invented site is handed to whoever keeps it. Facts, the clock and the store are handed in.",
      ...looksOnlyAt("demo", ["core", "words", "answers", "logbook"]),
    },
    {
      name: "the-server-puts-others-on-paths",
      severity: "error",
      comment: "The server knows what answers, keeps and draws. The app talks to it over HTTP, and tools stay outside.",
      ...looksOnlyAt("server", ["core", "data", "words", "answers", "drawings", "card", "logbook", "store", "demo"]),
    },
    {
      name: "the-app-needs-no-server",
      severity: "error",
      comment: "Every screen works with the server off: it asks the logbook on the device, and the exchange gets and gives entries.",
      ...looksOnlyAt("app", ["core", "data", "words", "answers", "drawings", "card", "logbook"]),
    },
    {
      name: "only-the-command-line-starts-the-server",
      severity: "error",
      comment: "The server is an edge. What others need from it belongs in answers, logbook, words or drawings.",
      from: { pathNot: ["^(server|cli|bench)/", test] },
      to: { path: "^server/" },
    },
    {
      name: "nothing-imports-the-command-line",
      severity: "error",
      comment: "The command line is an edge. What others need from it belongs in answers, words or drawings.",
      from: { pathNot: ["^cli/", test] },
      to: { path: "^cli/" },
    },
    {
      name: "nothing-imports-the-app",
      severity: "error",
      comment: "The app is an edge. What others need from it belongs in words, drawings, logbook or answers.",
      from: { pathNot: ["^app/", test] },
      to: { path: "^app/" },
    },
    {
      name: "no-circles",
      severity: "error",
      comment: "Two files that need each other are one file, or there is a third one missing below them.",
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ["type-only"] } },
    },
    {
      name: "programs-do-not-import-tests",
      severity: "error",
      comment: "Move what both need out of the test.",
      from: { pathNot: [test, "^bench/"] },
      to: { path: test },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    exclude: { path: "/dist/" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.base.json" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["source", "import", "node", "default"],
      extensions: [".ts", ".mjs", ".js", ".json"],
    },
  },
};
