import { DependencyManagerService, type IFormulaDependencyTree } from "@univerjs/engine-formula";

type TreeId = IFormulaDependencyTree["treeId"];

/** What the engine's keeper of dependencies does, some of it for itself only. */
interface Manager {
  readonly _allTreeMap: ReadonlyMap<TreeId, unknown>;
  addDependencyRTreeCache(tree: IFormulaDependencyTree): void;
  reset(): void;
  _removeDependencyRTreeCache(treeId: TreeId): void;
  _removeDependencyRTreeCacheById(unitId: string, sheetId: string): void;
  _removeAllTreeMap(treeId: TreeId): void;
}

/** Which ranges each formula was last said to read, as text. */
type RegisteredRanges = Map<TreeId, string>;

const registeredByManager = new WeakMap<Manager, RegisteredRanges>();
const registeredBy = (keeper: Manager): RegisteredRanges => {
  const said = registeredByManager.get(keeper) ?? new Map<TreeId, string>();
  registeredByManager.set(keeper, said);
  return said;
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
 * At every calculation the engine notes again which ranges every formula reads, and forgets none that it noted before: a page grew
 * by 0.2 MB an edit on the worked example, and each search took longer. A formula that reads what it read isn't noted again; one
 * that reads something else is forgotten first. Lasts for the life of the page or process; a second call changes nothing.
 */
export const registerRangesOnce = (): void => {
  if (isWrapped) return;
  isWrapped = true;
  const keeper = DependencyManagerService.prototype as unknown as Manager;
  const { addDependencyRTreeCache, reset, _removeDependencyRTreeCacheById, _removeAllTreeMap } = keeper;
  Object.assign(keeper, {
    addDependencyRTreeCache(this: Manager, tree: IFormulaDependencyTree) {
      const said = registeredBy(this);
      const ranges = rangesOf(tree);
      if (said.get(tree.treeId) === ranges) return;
      if (this._allTreeMap.has(tree.treeId)) {
        this._removeDependencyRTreeCache(tree.treeId);
        this._removeAllTreeMap(tree.treeId);
      }
      addDependencyRTreeCache.call(this, tree);
      said.set(tree.treeId, ranges);
    },
    reset(this: Manager) {
      registeredBy(this).clear();
      reset.call(this);
    },
    // All that was noted of a sheet goes, whichever formulas read it.
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
