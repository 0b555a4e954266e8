/** What SQLite says to a pragma: the first value of the first row. */
export function pragma(database: { prepare(sql: string): { all(): unknown[] } }, name: string): unknown {
  const [row] = database.prepare(`pragma ${name}`).all();
  return Object.values(row as Record<string, unknown>)[0];
}
