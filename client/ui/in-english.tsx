import type { ComponentChildren } from "preact";
import { unbroken } from "../base/unbroken.ts";
import { language } from "../language.ts";

/** For the lang attribute of words that come in English. */
const ENGLISH = language === "en" ? undefined : "en";

/** Words that come in English whatever the page's language, marked so that they are read aloud as English. */
export function InEnglish({ children }: { children: ComponentChildren }) {
  return <span lang={ENGLISH}>{typeof children === "string" ? unbroken(children) : children}</span>;
}
