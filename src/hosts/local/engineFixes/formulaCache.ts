import { FORMULA_REF_TO_ARRAY_CACHE } from "@univerjs/engine-formula";

/** So many parsed formulas the engine keeps: a workbook of more has every formula parsed anew at every edit. */
const KEPT_BY_ENGINE = 5_000;
/** About 10 kB each where all are different. */
const KEPT = 50_000;

interface Cache {
  readonly _cache: { limit: number };
  set(key: string, value: unknown): void;
}

let engineSet: Cache["set"] | undefined;

/**
 * Makes the engine keep more of the formulas that it has parsed. It doesn't export the cache that holds them, but the class
 * of all its caches can be had from one that it does export; the right one is known by its limit. Lasts for the life of the
 * page or process; a second call changes nothing.
 */
export const keepParsedFormulas = (): void => {
  const cacheClass = Object.getPrototypeOf(FORMULA_REF_TO_ARRAY_CACHE) as Cache;
  engineSet ??= cacheClass.set;
  const set = engineSet;
  cacheClass.set = function (key, value) {
    if (this._cache.limit === KEPT_BY_ENGINE) this._cache.limit = KEPT;
    set.call(this, key, value);
  };
};
