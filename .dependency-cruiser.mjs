/** Which way imports may look. Each rule is the sentence it enforces; the comment says what to do instead. */
const test = "[.]test[.]ts$|(^|/)testing/";
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
      to: { path: "^(words|answers|drawings|card|cli|bench|scripts)/" },
    },
    {
      name: "words-know-only-core",
      severity: "error",
      comment: "Words turn ids and values into sentences. They ask nothing.",
      from: { path: "^words/", pathNot: test },
      to: { path: "^(data|answers|drawings|card|cli|bench|scripts)/" },
    },
    {
      name: "answers-know-core-and-words",
      severity: "error",
      comment: "Facts are handed to an answer by whoever asks; drawing and printing come after it.",
      from: { path: "^answers/", pathNot: test },
      to: { path: "^(data|drawings|card|cli|bench|scripts)/" },
    },
    {
      name: "drawings-receive-answers",
      severity: "error",
      comment: "A drawing is given what the core found, and works out no engineering of its own.",
      from: { path: "^drawings/", pathNot: test },
      to: { path: "^(data|answers|card|cli|bench|scripts)/" },
    },
    {
      name: "the-card-knows-core-words-and-drawings",
      severity: "error",
      comment: "The card lays out a plan that it is given. Facts, PDF library, fonts, clock and file are the edge's to hand in.",
      from: { path: "^card/", pathNot: test },
      to: { path: ["^(data|answers|cli|bench|scripts)/", "node_modules/(pdfkit|fontkit|@fontsource|dejavu-fonts-ttf)"] },
    },
    {
      name: "the-card-is-loaded-when-it-is-asked-for",
      severity: "error",
      comment: "Card, PDF library and fonts are heavy: import() them where they are used, so that an answer need not wait for them.",
      from: { path: "^cli/", pathNot: [test, "[.]d[.]ts$"] },
      to: { path: "^card/|node_modules/pdfkit", dynamic: false, dependencyTypesNot: ["type-only"] },
    },
    {
      name: "nothing-imports-the-command-line",
      severity: "error",
      comment: "The command line is an edge. What others need from it belongs in answers, words or drawings.",
      from: { pathNot: ["^cli/", test] },
      to: { path: "^cli/" },
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
