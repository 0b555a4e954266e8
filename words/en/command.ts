/** What the command line says, by id. Columns of the usage are laid out here, as they are printed. */
export const commandSentences: Readonly<Record<string, string>> = {
  "command-usage": `ringwright: everything about packing a stuffing box, from what was measured

  ringwright example                 a box to fill in, with comments
  ringwright plan FILE               the whole plan for a box (JSON or YAML; - for standard input)
      --workings                     with the workings and sources of every number
      --units metric|inch            units to show (default: metric)
      --drawing box.svg              also draw the box in section, to scale
      --clock joints.svg             where each joint goes
      --strip strip.svg              the strip to cut
      --push push.svg                how much of a further push reaches each ring
      --card card.pdf                the card to take along where no device may go, with room to write
      --paper a4|letter              the card's paper (default: a4)
      --json                         the plan as data
  ringwright serve                   the app and the answers over HTTP, on this machine (PORT, RINGWRIGHT_DATA, DATABASE_URL)
      --open                         open it in the browser
  ringwright answers                 every question that can be asked, with its schema
  ringwright answer NAME             one answer: the question as JSON on standard input
  ringwright example NAME            a question and its reply

Exit: 0 answered · 2 the question is malformed · 3 no answer is possible (the reply says why)`,
  "command-unknown": "There is no command “{command}”.",
  "command-one-file": "Name one box file, or - for standard input.",
  "command-units": "--units: “{given}” is neither metric nor inch.",
  "command-paper": "--paper: “{given}” is neither a4 nor letter.",
  "refusal-field": "field",
  "refusal-given": "given",
  "refusal-allowed": "allowed",
  "refusal-between": "{low} to {high}",
  "refusal-above-to": "above {low}, to {high}",
  "refusal-least": "{low} or more",
  "refusal-above": "above {low}",
  "refusal-most": "{high} or less",
  "command-no-example": "There is no answer called “{given}”. There are: {allowed}.",
};

/** Names of this topic, where the id is not itself the word. */
export const commandNames: Readonly<Record<string, string>> = {};
