import { expect, type Locator } from 'playwright/test';

/** Press a button as a person without a mouse does: once it can be pressed and has the focus. While a deed runs no button can. */
export async function pressEnter(button: Locator): Promise<void> {
  await expect(button).toBeEnabled();
  await button.focus();
  await expect(button).toBeFocused();
  await button.press('Enter');
}
