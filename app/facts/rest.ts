/** Packings, fluids, and the steps of fitting and running in: what a box can be measured and drawn without. */
export const rest = import.meta.glob<unknown>(["../../data/materials/{styles,fluids}.json", "../../data/{steps,run-in}/*.json"], {
  eager: true,
  import: "default",
});
