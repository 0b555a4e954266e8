import axe from "axe-core";
import type { Page } from "playwright-core";

const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

/** What axe finds against WCAG 2.2 A and AA, and against 7:1: the rule and where, one line each. */
export async function violations(page: Page): Promise<readonly string[]> {
  if (!(await page.evaluate('"axe" in window'))) await page.evaluate(axe.source);
  return (await page.evaluate(`axe.run(document, {
      runOnly: { type: "tag", values: ${JSON.stringify(tags)} },
      // What reaches 7:1 reaches 4.5:1.
      rules: { "target-size": { enabled: true }, "color-contrast-enhanced": { enabled: true }, "color-contrast": { enabled: false } },
      resultTypes: ["violations"],
    }).then(({ violations }) => violations.flatMap(({ id, nodes }) => nodes.map(({ target, failureSummary }) =>
      id + " at " + target.join(" ") + ": " + failureSummary.split("\\n").slice(1, 3).join(" ").trim())))`)) as readonly string[];
}

/**
 * What can be tapped and is less than 48 px one way or 44 px the other. A link
 * in the middle of a sentence is left out, as WCAG 2.5.8 does. A box or ring
 * to tick is as large as its label, which takes the tap too.
 */
export async function smallTargets(page: Page): Promise<readonly string[]> {
  return (await page.evaluate(`(() => {
    const inSentence = (one) =>
      one.tagName === "A" && getComputedStyle(one).display === "inline" &&
      [...one.parentNode.childNodes].some((beside) => beside.nodeType === 3 && beside.data.trim().length > 1);
    return [...document.querySelectorAll("a[href], button, input, select, textarea, summary")]
      .filter((one) => one.checkVisibility({ visibilityProperty: true }) && !inSentence(one))
      .map((one) => ({ one, box: (one.matches("[type=radio], [type=checkbox]") ? one.closest("label") : one).getBoundingClientRect() }))
      .filter(({ box }) => Math.max(box.width, box.height) < 47.5 || Math.min(box.width, box.height) < 43.5)
      .map(({ one, box }) => [one.tagName.toLowerCase() + "." + one.className, (one.textContent || one.name || "").trim().slice(0, 40),
        Math.round(box.width) + " x " + Math.round(box.height)].join(" "));
  })()`)) as readonly string[];
}

/** By how much the page can be pushed sideways, if at all, and what sticks out. */
export async function sideways(page: Page): Promise<readonly string[]> {
  return (await page.evaluate(`(() => {
    const { scrollWidth, clientWidth } = document.scrollingElement;
    if (scrollWidth <= clientWidth) return [];
    const out = [...document.querySelectorAll("body *")].filter((one) => one.checkVisibility() && one.getBoundingClientRect().right > clientWidth + 1);
    return [scrollWidth - clientWidth + " px sideways: " + out.slice(0, 3).map((one) => one.tagName + "." + one.className).join(", ")];
  })()`)) as readonly string[];
}

/** Buttons and links whose words do not fit into them. */
export async function cutOff(page: Page): Promise<readonly string[]> {
  return (await page.evaluate(`[...document.querySelectorAll(".primary, .second, .key, .option, nav a, nav, .workings")]
    .filter((one) => one.checkVisibility() && (one.scrollWidth > one.clientWidth + 1 || one.scrollHeight > one.clientHeight + 1))
    .map((one) => "cut off: " + one.outerHTML.slice(0, 90))`)) as readonly string[];
}

/** Goes to another place of the app without loading it anew. */
export async function visit(page: Page, path: string): Promise<void> {
  await page.evaluate(`history.pushState(null, "", ${JSON.stringify(path)}); dispatchEvent(new PopStateEvent("popstate"))`);
}

/** What is wrong with where the focus goes by the tab key: what it never reaches, and where it can't be seen. */
export async function byTab(page: Page): Promise<readonly string[]> {
  const stops = (await page.evaluate(`new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))).then(() => {
    window.reached = new Map();
    const ringed = (one) => {
      const { outlineStyle, outlineWidth } = getComputedStyle(one);
      return outlineStyle !== "none" && parseFloat(outlineWidth) >= 2;
    };
    window.note = ({ target }) => window.reached.set(target, ringed(target) || (target.closest("label") !== null && ringed(target.closest("label"))));
    addEventListener("focusin", window.note);
    document.activeElement.blur();
    // What lies under an open dialog is out of reach, as it has to be.
    window.stops = [...(document.querySelector("dialog[open]") ?? document).querySelectorAll("a[href], button, input, select, textarea, summary, [tabindex='0']")]
      .filter((one) => one.checkVisibility({ visibilityProperty: true }) && !one.matches(".key"));
    // Day, month, year, hour, minute, half of the day and the calendar are stops of their own.
    return window.stops.reduce((sum, one) => sum + (one.type === "datetime-local" ? 8 : 1), 0);
  })`)) as number;
  // Once round from wherever it stands, with the ends of the page.
  for (let press = 0; press < stops + 6; press++) await page.keyboard.press("Tab");
  return (await page.evaluate(`(() => {
    removeEventListener("focusin", window.note);
    const rings = new Set([...window.reached.keys()].filter((one) => one.type === "radio").map(({ name }) => name));
    const missed = window.stops.filter((one) => !window.reached.has(one) && (one.type !== "radio" || !rings.has(one.name)));
    const unseen = [...window.reached].filter(([, ringed]) => !ringed).map(([one]) => one);
    return [...missed.map((one) => "not reached: " + one.outerHTML.slice(0, 90)), ...unseen.map((one) => "focus not seen on " + one.outerHTML.slice(0, 90))];
  })()`)) as readonly string[];
}
