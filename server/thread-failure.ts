import { fileTrouble } from "../db/disk.ts";
import { causesOf, type StorageTrouble, troubled, troubleOf } from "../db/storage-trouble.ts";

/**
 * Why a thread could not do what it was asked to, as it goes from thread to thread: of what kind an error was gets lost on the way.
 * What wraps a cause may repeat a tune's figures, so it stays behind.
 */
export interface ThreadFailure {
  failed: unknown;
  /** What the storage has to do with it, if anything. */
  trouble: StorageTrouble | undefined;
}

/** What a thread answers in place of what it made. */
export const failureOf = (error: unknown): ThreadFailure => ({
  failed: causesOf(error).at(-1),
  trouble: troubleOf(fileTrouble(error) ?? error),
});

/** The same as an error again, which is answered as one of the storage's wherever it comes from. */
export const errorOf = ({ failed, trouble }: ThreadFailure): unknown =>
  trouble ? troubled(trouble, failed) : failed;
