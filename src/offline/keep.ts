/**
 * Lets the browser store the whole site, so that it opens offline from the second visit on. It starts after the page has loaded. If the
 * browser doesn't allow it, the site works online as before.
 */
if ("serviceWorker" in navigator)
  window.addEventListener("load", () => {
    navigator.serviceWorker.register("service-worker.js", { updateViaCache: "none" }).catch(() => undefined);
  });
