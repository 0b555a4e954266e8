import type { Source } from "./source.ts";

/** Forum threads and owners' notes: for pains and ranges, never as an authority. */
export const forums = {
  "engineers-forum-box-pressure": {
    title: "Engineers' forum, thread on box pressure by impeller design",
    seen: "read",
    what: "One reply",
  },
  "yacht-magazine-tip": {
    title: "Yachting magazine's tip on stern glands",
    seen: "read",
    what: "Excerpt of the text",
  },
  "yacht-owner-notes": {
    title: "Yacht owner's notes on stern glands",
    seen: "read",
    what: "Excerpt of the text",
  },
  "sailing-forum-thread": {
    title: "Sailing forum, thread on a repacked gland",
    seen: "read",
    what: "Excerpt of the thread",
  },
  "sailboat-owners-thread": {
    title: "Sailboat owners' forum, thread on gland temperature",
    seen: "read",
    what: "Excerpt of the thread",
  },
  "trawler-forum-thread": {
    title: "Trawler forum, thread on cutting rings",
    seen: "read",
    what: "Excerpt of the thread",
  },
  "wooden-boat-thread": {
    title: "Wooden boat forum, thread on a hot gland, 2001",
    seen: "read",
    what: "Excerpt of the thread",
  },
  "yacht-class-thread": {
    title: "Yacht class forum, thread on drips",
    seen: "read",
    what: "Excerpt of the thread",
  },
  "yacht-owners-thread": {
    title: "Yacht owners' forum, thread on a seized lock nut",
    seen: "read",
    what: "Excerpt of the thread",
  },
} as const satisfies Record<string, Source>;
