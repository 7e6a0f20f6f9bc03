import { DependencyManagerService, type IFormulaDependencyTree } from "@univerjs/engine-formula";

type TreeId = IFormulaDependencyTree["treeId"];

/** The members of the engine's dependency manager that the fix uses, private ones included. */
interface Manager {
  readonly _allTreeMap: ReadonlyMap<TreeId, unknown>;
  addDependencyRTreeCache(tree: IFormulaDependencyTree): void;
  reset(): void;
  _removeDependencyRTreeCache(treeId: TreeId): void;
  _removeDependencyRTreeCacheById(unitId: string, sheetId: string): void;
  _removeAllTreeMap(treeId: TreeId): void;
}

/** The ranges last registered for each formula, as text. */
type RegisteredRanges = Map<TreeId, string>;

const registeredByManager = new WeakMap<Manager, RegisteredRanges>();
const registeredBy = (manager: Manager): RegisteredRanges => {
  const registered = registeredByManager.get(manager) ?? new Map<TreeId, string>();
  registeredByManager.set(manager, registered);
  return registered;
};

const rangesOf = ({ rangeList }: IFormulaDependencyTree): string =>
  rangeList
    .map(
      ({ unitId, sheetId, range: { startRow, startColumn, endRow, endColumn } }) =>
        `${unitId}!${sheetId}!${startRow}:${startColumn}:${endRow}:${endColumn}`,
    )
    .join("\n");

let isWrapped = false;

/**
 * At every calculation the engine registers the ranges that every formula reads, and keeps the old registrations too. On the
 * worked example the page grew by 0.2 MB per edit, and every lookup got slower. With the fix, a formula is registered again only
 * if its ranges have changed, after the old ones are removed. Lasts for the life of the page or process; a second call changes
 * nothing.
 */
export const registerRangesOnce = (): void => {
  if (isWrapped) return;
  isWrapped = true;
  const manager = DependencyManagerService.prototype as unknown as Manager;
  const { addDependencyRTreeCache, reset, _removeDependencyRTreeCacheById, _removeAllTreeMap } = manager;
  Object.assign(manager, {
    addDependencyRTreeCache(this: Manager, tree: IFormulaDependencyTree) {
      const registered = registeredBy(this);
      const ranges = rangesOf(tree);
      if (registered.get(tree.treeId) === ranges) return;
      if (this._allTreeMap.has(tree.treeId)) {
        this._removeDependencyRTreeCache(tree.treeId);
        this._removeAllTreeMap(tree.treeId);
      }
      addDependencyRTreeCache.call(this, tree);
      registered.set(tree.treeId, ranges);
    },
    reset(this: Manager) {
      registeredBy(this).clear();
      reset.call(this);
    },
    // This removes every range on a sheet, whichever formulas read it.
    _removeDependencyRTreeCacheById(this: Manager, unitId: string, sheetId: string) {
      registeredBy(this).clear();
      _removeDependencyRTreeCacheById.call(this, unitId, sheetId);
    },
    _removeAllTreeMap(this: Manager, treeId: TreeId) {
      registeredBy(this).delete(treeId);
      _removeAllTreeMap.call(this, treeId);
    },
  } satisfies Partial<Manager>);
};
