/** Exit codes: answered; the question or command is malformed; no answer is possible. */
export const exits = { ok: 0, malformed: 2, refused: 3 } as const;
