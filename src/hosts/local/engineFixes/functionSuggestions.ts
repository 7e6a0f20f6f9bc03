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

/** The operation that handles a key in the engine's list of suggested functions; each editor has its own. */
const LIST_OPERATION = "sheet.formula-embedding-editor.search_function.";

/** The list has at most this many functions. */
const LONGEST_LIST = 10;

const ACCEPT_KEYS: readonly unknown[] = [KeyCode.ENTER, KeyCode.TAB];

/** The beginning of a function's name at the end of a text. */
const PARTIAL_NAME = /[\p{L}\d_.]*$/u;

/**
 * The engine updates its list of suggested functions only after a third of a second without typing. Until then Enter inserts a
 * function of the old list over what was typed: `=SUM`, a pause, `(S4:S5)` and Enter left the cell open with other text in it. With
 * the fix, the list closes as soon as no function begins with the text before the caret, and Enter and Tab insert nothing from
 * an outdated list.
 *
 * The engine also keeps the highlighted position of the previous list, even past the end of the new one, where Enter failed. It
 * registers the list's operation again for each list, and the fix then highlights the first function.
 */
export const keepSuggestionsFresh = (injector: Injector): void => {
  const commands = injector.get(ICommandService);
  const descriptions = injector.get(IDescriptionService);
  const listOf = descriptions.getSearchListByNameFirstLetter.bind(descriptions);
  let listedName = "";
  let partialName = "";
  descriptions.getSearchListByNameFirstLetter = (name) => {
    listedName = name;
    return listOf(name);
  };

  const register = commands.registerCommand.bind(commands);
  commands.registerCommand = (command) => {
    const registered = register(command);
    if (command.id.startsWith(LIST_OPERATION))
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
    partialName = PARTIAL_NAME.exec(body.dataStream.slice(0, caret))?.[0] ?? "";
    const isOpen = commands.hasCommand(LIST_OPERATION + unitId);
    if (isOpen && (partialName === "" || listOf(partialName).length === 0))
      commands.syncExecuteCommand(LIST_OPERATION + unitId, { keyCode: KeyCode.ESC });
  });

  commands.beforeCommandExecuted(({ id, params }) => {
    if (!id.startsWith(LIST_OPERATION)) return;
    const { keyCode } = params as { readonly keyCode: unknown };
    if (ACCEPT_KEYS.includes(keyCode) && !listedName.endsWith(partialName))
      // The engine cancels a command on this error and shows nothing.
      throw new CustomCommandExecutionError("The list of suggested functions is outdated.");
  });
};
