import "./look/look.css";
import { render } from "preact";
import { openStorage } from "./device/storage.ts";
import { App } from "./frame/app.tsx";
import { Preferences } from "./frame/preferences.ts";
import { WorkshopProvider } from "./frame/workshop.ts";
import { Drafts } from "./kept/drafts.ts";
import { Exchange } from "./kept/exchange.ts";
import { Kept } from "./kept/kept.ts";
import { siteHere } from "./kept/site.ts";

const root = document.getElementById("app");
if (!root) throw new Error("the page has no place for the app");

const storage = await openStorage();
const [site, drafts, preferences] = await Promise.all([siteHere(storage), Drafts.open(storage), Preferences.open(storage)]);
const kept = await Kept.open(site, storage);
new Exchange(kept).keepUp();
root.replaceChildren();
render(
  <WorkshopProvider value={{ kept, drafts, preferences }}>
    <App />
  </WorkshopProvider>,
  root,
);
