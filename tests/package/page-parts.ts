import type { Page } from 'playwright-core';

/** What of a canvas the tests use. */
export interface PictureElement {
  readonly width: number;
  readonly height: number;
  getContext(kind: '2d'): { getImageData(...box: number[]): { readonly data: ArrayLike<number> } };
}

/** Heading of what is told of a chosen solid. */
export const heading = (page: Page) => page.locator('#about h3').textContent();
/** What is told of it, by name. */
export const facts = async (page: Page) => {
  const [names, values] = await Promise.all(['dt', 'dd'].map((tag) => page.locator(`#about ${tag}`).allTextContents()));
  return Object.fromEntries((names as string[]).map((name, i) => [name, (values as string[])[i]]));
};
/** Moves a slider, as a hand does. */
export const set = (page: Page, id: string, value: number) =>
  page.locator(`#${id}`).evaluate((input: { value: string; dispatchEvent(event: Event): unknown }, to) => {
    input.value = String(to);
    input.dispatchEvent(new Event('input', { bubbles: true }));
  }, value);
