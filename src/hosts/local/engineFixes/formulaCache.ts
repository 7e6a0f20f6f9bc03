import { FORMULA_REF_TO_ARRAY_CACHE } from "@univerjs/engine-formula";

/** The engine's limit for parsed formulas. In a workbook with more, every edit parses every formula again. */
const ENGINE_LIMIT = 5_000;
/** Each takes about 10 kB if all differ. */
const RAISED_LIMIT = 50_000;

interface Cache {
  readonly _cache: { limit: number };
  set(key: string, value: unknown): void;
}

let engineSet: Cache["set"] | undefined;

/**
 * Raises the number of parsed formulas that the engine caches. The engine doesn't export that cache, so the fix goes through the
 * class of a cache that it does export, and recognizes the right one by its limit. Lasts for the life of the page or process; a
 * second call changes nothing.
 */
export const keepParsedFormulas = (): void => {
  const cacheClass = Object.getPrototypeOf(FORMULA_REF_TO_ARRAY_CACHE) as Cache;
  engineSet ??= cacheClass.set;
  const set = engineSet;
  cacheClass.set = function (key, value) {
    if (this._cache.limit === ENGINE_LIMIT) this._cache.limit = RAISED_LIMIT;
    set.call(this, key, value);
  };
};
