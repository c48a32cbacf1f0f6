/**
 * Opens one page when there is no signal: the one that logs throws onto this device. It is fetched without cookies, so
 * that nothing about anybody is in it, and kept with the scripts and styles it names. Everything else goes to the
 * academy as if this were not here.
 */
const PLACE = "without-signal";
const PAGE = "/without-signal";

/* A page of these is asked for where throws are logged; without an answer its place is taken. */
const isPageToStandInFor = (path) => path === "/" || path.startsWith("/family/");

self.addEventListener("install", (event) => {
  event.waitUntil(keepPage().then(() => self.skipWaiting()));
});

self.addEventListener("activate", (event) => {
  event.waitUntil(self.clients.claim());
});

/* The academy may have a newer page than the one kept: each page of a family asks once for it to be kept anew. */
self.addEventListener("message", (event) => {
  if (event.data === "keep-page") event.waitUntil(keepPage().catch(() => undefined));
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const address = new URL(request.url);
  if (request.method !== "GET" || address.origin !== self.location.origin) return;
  const path = address.pathname;
  if (request.mode === "navigate" && path === PAGE) event.respondWith(freshOrKept(request, PAGE));
  else if (request.mode === "navigate" && isPageToStandInFor(path))
    event.respondWith(freshOrStandIn(request));
  else if (path.startsWith("/_next/static/")) event.respondWith(freshOrKept(request, path));
});

async function freshOrKept(request, path) {
  try {
    return await fetch(request);
  } catch {
    return (await kept(path)) ?? Response.error();
  }
}

async function freshOrStandIn(request) {
  try {
    return await fetch(request);
  } catch {
    return (await kept(PAGE)) ? Response.redirect(PAGE, 302) : Response.error();
  }
}

async function kept(path) {
  return (await caches.open(PLACE)).match(path);
}

/** Keeps the page and all it names, or leaves what was kept when any of it cannot be had. */
async function keepPage() {
  const page = await fetch(PAGE, { credentials: "omit", cache: "no-store" });
  if (!page.ok || page.redirected) throw new Error("The page without signal is not there.");
  const files = filesIn(await page.clone().text());
  const answers = await Promise.all(files.map((file) => fetch(file)));
  if (answers.some((answer) => !answer.ok)) throw new Error("Not all of the page could be had.");
  const place = await caches.open(PLACE);
  await Promise.all(files.map((file, at) => place.put(file, answers[at])));
  await place.put(PAGE, page);
  const wanted = [PAGE, ...files];
  const others = (await place.keys()).filter((request) => !wanted.includes(new URL(request.url).pathname));
  await Promise.all(others.map((request) => place.delete(request)));
}

/** Scripts, styles and fonts that the page names, in its head or for later, each once. */
function filesIn(html) {
  const named = html.matchAll(/(?:\/_next\/)?static\/[\w\-./%~()[\]]+\.(?:js|css|woff2)/g);
  return [...new Set([...named].map(([file]) => (file.startsWith("/") ? file : `/_next/${file}`)))];
}
