/** A document in Markdown as parts of a page, made by `markdown-page.ts` when the page is built. */
declare module "*.md?page" {
  export const parts: readonly { id: string; html: string }[];
}
