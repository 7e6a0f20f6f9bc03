import type { Page } from "playwright-core";

const PATIENCE_MS = 10_000;

/**
 * Goes to a cell or selects a block the way a person does: by its address in the name box. On a busy machine the engine's name
 * box has lost an address before. A person types it again, once, and so does this.
 */
export const goTo = async (page: Page, address: string): Promise<void> => {
  const nameBox = page.locator('[data-u-comp="defined-name"] input, [class*="defined-name"] input').first();
  const shown = page.locator(".cell dt");
  const reached = shown.filter({ hasText: new RegExp(`, ${address.split(":")[0]}$`) });
  const go = async (): Promise<boolean> => {
    await nameBox.click();
    await nameBox.fill(address);
    await nameBox.press("Enter");
    return reached.waitFor({ timeout: PATIENCE_MS }).then(
      () => true,
      () => false,
    );
  };
  if ((await go()) || (await go())) return;
  throw new Error(
    `The name box doesn't go to ${address}: it shows ${await nameBox.inputValue()}, the pane ${await shown.textContent()}.`,
  );
};
