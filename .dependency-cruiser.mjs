/** Which way imports may look. Each rule is the sentence it enforces; the comment says what to do instead. */
const test = "[.]test[.]ts$|^testing/";
const topics = "section|box|rings|lantern|gland|stems|heat|leak|flush|fluid|materials|fit|run-in|cautions|rods|condition";

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
      from: { path: "^data/", pathNot: test },
      to: { path: "^(app|server|store|logbook|card|words|answers|drawings|cli|bench|scripts)/" },
    },
    {
      name: "words-know-only-core",
      severity: "error",
      comment: "Words turn ids and values into sentences. They ask nothing.",
      from: { path: "^words/", pathNot: test },
      to: { path: "^(data|answers|drawings|logbook|cli|bench|scripts)/" },
    },
    {
      name: "answers-know-core-and-words",
      severity: "error",
      comment: "Facts are handed to an answer by whoever asks; drawing and printing come after it.",
      from: { path: "^answers/", pathNot: test },
      to: { path: "^(data|drawings|logbook|cli|bench|scripts)/" },
    },
    {
      name: "drawings-receive-answers",
      severity: "error",
      comment: "A drawing is given what the core found, and works out no engineering of its own.",
      from: { path: "^drawings/", pathNot: test },
      to: { path: "^(data|answers|logbook|cli|bench|scripts)/" },
    },
    {
      name: "logbook-knows-only-core",
      severity: "error",
      comment: "The logbook adds entries up. Keeping them, sending them and saying them in words come after it: hand in what it needs.",
      from: { path: "^logbook/", pathNot: test },
      to: { path: "^(data|words|answers|drawings|store|server|app|cli|bench|scripts)/" },
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
      name: "the-app-needs-no-server",
      severity: "error",
      comment: "Every screen works with the server off: it asks the logbook on the device, and the exchange gets and gives entries.",
      from: { path: "^app/", pathNot: test },
      to: { path: "^(store|server|cli|demo|bench|scripts)/" },
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
      from: { pathNot: test },
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
