import type { Page } from "playwright-core";

/** Goes to a cell, or selects a block, as a person would: by its address in the name box. */
export const goTo = async (page: Page, address: string): Promise<void> => {
  const nameBox = page.locator('[data-u-comp="defined-name"] input, [class*="defined-name"] input').first();
  await nameBox.click();
  await nameBox.fill(address);
  await nameBox.press("Enter");
  await page.locator(".cell dt", { hasText: `, ${address.split(":")[0]}` }).waitFor();
};
