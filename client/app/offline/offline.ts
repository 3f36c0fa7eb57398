/** All of it in one piece, fetched after the first answer. */
export { Notices } from "./notices.tsx";
export { OfflinePanel } from "./panel.tsx";
export { keepAnswers, startOffline } from "./start.ts";
