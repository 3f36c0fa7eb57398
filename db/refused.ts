/** A database that must not be opened as it is; the message says why, and what to do. */
export class DatabaseRefused extends Error {}
