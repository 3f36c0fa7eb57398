import { parts } from "../../docs/method.md?page";
import { dataWords } from "../texts/data.ts";

/** How it is made: the project's own document, made into HTML when the page was built. */
export function Method() {
  return (
    <div class="page wide-page">
      {dataWords.methodLanguage && <p>{dataWords.methodLanguage}</p>}
      <article class="method" lang="en" dir="ltr">
        {parts.map(({ id, html }) => (
          <section
            key={id}
            class="sheet"
            aria-labelledby={id}
            // Safe: made from our own file, before anybody's words come in
            dangerouslySetInnerHTML={{ __html: html }}
          />
        ))}
      </article>
    </div>
  );
}
