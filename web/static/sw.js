// Keeps the app's own files, whole and checked, so that it opens with no network. It knows nothing of what the app does.
"use strict";

// The build fills these two in: every file with the SHA-256 of its content, and a digest of that list and of this program.
const files = {};
const version = "unbuilt";

const prefix = "winterset-";
const name = prefix + version;
const page = "index.html";

self.addEventListener("install", (event) => event.waitUntil(keepAll()));
self.addEventListener("activate", (event) => event.waitUntil(dropOld()));
self.addEventListener("fetch", (event) => {
  const path = pathOf(event.request);
  if (path !== undefined) event.respondWith(answer(event.request, path));
});
self.addEventListener("message", (event) => {
  switch (event.data?.kind) {
    // A new version waits until a person asks for it: nothing changes under their hands.
    case "take-over":
      event.waitUntil(self.skipWaiting());
      break;
    case "status":
      event.waitUntil(tellStatus(event.source));
      break;
  }
});

// All or nothing: one file that does not arrive as built leaves the old version in place.
async function keepAll() {
  const cache = await caches.open(name);
  try {
    await Promise.all(Object.entries(files).map(([path, digest]) => keep(cache, path, digest)));
  } catch (error) {
    await caches.delete(name);
    throw error;
  }
}

async function keep(cache, path, digest) {
  const response = await fetch(path, { cache: "no-cache" });
  if (!response.ok) throw new Error(`${path}: status ${response.status}`);
  const body = await response.arrayBuffer();
  const found = hex(await crypto.subtle.digest("SHA-256", body));
  if (found !== digest) throw new Error(`${path}: not the file of this version`);
  const type = response.headers.get("content-type");
  await cache.put(path, new Response(body, { headers: type ? { "content-type": type } : {} }));
}

// Whether every file is kept; one that has got lost since is fetched again where there is a network.
async function tellStatus(asker) {
  const cache = await caches.open(name);
  const lost = [];
  for (const path of Object.keys(files)) {
    if ((await cache.match(path)) === undefined) lost.push(path);
  }
  const made = await Promise.allSettled(lost.map((path) => keep(cache, path, files[path])));
  asker?.postMessage({ kind: "status", version, whole: made.every((one) => one.status === "fulfilled") });
}

async function dropOld() {
  for (const other of await caches.keys()) {
    if (other.startsWith(prefix) && other !== name) await caches.delete(other);
  }
  await self.clients.claim();
}

// The kept file that a request asks for; undefined for everything that is not the app's own.
function pathOf(request) {
  if (request.method !== "GET") return undefined;
  const scope = new URL(self.registration.scope);
  const asked = new URL(request.url);
  if (asked.origin !== scope.origin || !asked.pathname.startsWith(scope.pathname)) return undefined;
  const path = asked.pathname.slice(scope.pathname.length);
  if (path === "" && request.mode === "navigate") return page;
  return Object.hasOwn(files, path) ? path : undefined;
}

async function answer(request, path) {
  const cache = await caches.open(name);
  // The browser may have thrown the cache away for want of space: then the network is asked again.
  return (await cache.match(path)) ?? fetch(request);
}

function hex(buffer) {
  return Array.from(new Uint8Array(buffer), (byte) => byte.toString(16).padStart(2, "0")).join("");
}
