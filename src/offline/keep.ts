/**
 * Has the browser keep the whole site, so that it opens without a network from the second time on. Where it may not, all stays as
 * it was: the site is then there as long as the network is.
 */
if ("serviceWorker" in navigator)
  navigator.serviceWorker.register("service-worker.js", { updateViaCache: "none" }).catch(() => undefined);
