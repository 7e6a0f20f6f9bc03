import {
  CustomCommandExecutionError,
  ICommandService,
  IUniverInstanceService,
  type DocumentDataModel,
  type Injector,
} from "@univerjs/core";
import { RichTextEditingMutation, type IRichTextEditingMutationParams } from "@univerjs/docs";
import { IDescriptionService } from "@univerjs/sheets-formula";
import { KeyCode } from "@univerjs/ui";

/** What the engine's list of functions that a name may become does with a key, one operation an editor. */
const LIST_KEY = "sheet.formula-embedding-editor.search_function.";

/** It lists no more than this. */
const LONGEST_LIST = 10;

const CHOOSING: readonly unknown[] = [KeyCode.ENTER, KeyCode.TAB];

/** The function's name that is being typed at the end of a text, as far as it goes. */
const NAME_BEGUN = /[\p{L}\d_.]*$/u;

/**
 * The engine's list of functions follows what is typed only when nothing has been typed for a third of a second; until then Enter
 * takes a function of the old list and drops what was typed: `=SUM`, a moment's thought, `(S4:S5)` and Enter left the cell open
 * with something else in it. So the list closes as soon as no function begins like what stands before the caret, and gives
 * nothing to Enter and Tab while it is of an older text.
 *
 * The engine also keeps the place that was marked in the list before, even one past the end of the new list, where Enter failed.
 * It registers the list's keys for each list anew: then its first function is marked.
 */
export const keepSuggestionsFresh = (injector: Injector): void => {
  const commands = injector.get(ICommandService);
  const descriptions = injector.get(IDescriptionService);
  const listOf = descriptions.getSearchListByNameFirstLetter.bind(descriptions);
  let listed = "";
  let begun = "";
  descriptions.getSearchListByNameFirstLetter = (name) => {
    listed = name;
    return listOf(name);
  };

  const register = commands.registerCommand.bind(commands);
  commands.registerCommand = (command) => {
    const registered = register(command);
    if (command.id.startsWith(LIST_KEY))
      for (let step = 1; step < LONGEST_LIST; step++)
        commands.syncExecuteCommand(command.id, { keyCode: KeyCode.ARROW_UP });
    return registered;
  };

  commands.onCommandExecuted(({ id, params }) => {
    if (id !== RichTextEditingMutation.id) return;
    const { unitId, textRanges } = params as IRichTextEditingMutationParams;
    const caret = textRanges?.[0]?.startOffset;
    const body = injector.get(IUniverInstanceService).getUnit<DocumentDataModel>(unitId)?.getBody();
    if (caret === undefined || !body) return;
    begun = NAME_BEGUN.exec(body.dataStream.slice(0, caret))?.[0] ?? "";
    const isOpen = commands.hasCommand(LIST_KEY + unitId);
    if (isOpen && (begun === "" || listOf(begun).length === 0))
      commands.syncExecuteCommand(LIST_KEY + unitId, { keyCode: KeyCode.ESC });
  });

  commands.beforeCommandExecuted(({ id, params }) => {
    if (!id.startsWith(LIST_KEY)) return;
    const { keyCode } = params as { readonly keyCode: unknown };
    if (CHOOSING.includes(keyCode) && !listed.endsWith(begun))
      // The engine takes this error for "no", without a word of its own.
      throw new CustomCommandExecutionError("The list of functions is of an older text.");
  });
};
