import { useEffect, useState } from "preact/hooks";
import { t } from "../texts/app.ts";
import { stewardWords as words } from "../texts/steward.ts";
import { Desk } from "./desk.tsx";
import { Door } from "./door.tsx";
import "./steward.css";

/** Where the token stays: in this tab, for as long as it is open. */
const TOKEN = "hypsotune.steward";

function keptToken(): string {
  try {
    return sessionStorage.getItem(TOKEN) ?? "";
  } catch {
    return "";
  }
}

function keepToken(token: string): void {
  try {
    if (token) sessionStorage.setItem(TOKEN, token);
    else sessionStorage.removeItem(TOKEN);
  } catch {
    // Storage forbidden: it is kept until the page is loaded anew.
  }
}

/** The page of whoever looks after the atlas, behind a token. */
export function Steward() {
  const [token, setToken] = useState(keptToken);
  const [refused, setRefused] = useState("");
  useEffect(() => {
    document.title = `${words.title} · ${t.name}`;
  }, []);
  const open = (next: string) => {
    keepToken(next);
    setRefused("");
    setToken(next);
  };
  const close = (why = "") => {
    keepToken("");
    setRefused(why);
    setToken("");
  };
  return (
    <div class="steward">
      {token ? (
        <Desk
          key={token}
          token={token}
          onLeave={() => close()}
          onRefused={() => close(words.wrong)}
        />
      ) : (
        <Door refused={refused} onToken={open} />
      )}
    </div>
  );
}
