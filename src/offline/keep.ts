/**
 * Has the browser keep the whole site, so that it opens without a network from the second time on; once the page has loaded, which
 * goes first. Where it may not, all stays as it was: the site is then there as long as the network is.
 */
if ("serviceWorker" in navigator)
  window.addEventListener("load", () => {
    navigator.serviceWorker.register("service-worker.js", { updateViaCache: "none" }).catch(() => undefined);
  });
