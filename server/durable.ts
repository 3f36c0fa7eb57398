/** What the atlas asks of a Durable Object's runtime: the little of it that is used. */

/** The storage that an object has for itself. */
export interface ObjectStorage {
  get<T>(key: string): Promise<T | undefined>;
  put(key: string, value: unknown): Promise<void>;
  list(options: { prefix: string }): Promise<Map<string, unknown>>;
  delete(keys: string[]): Promise<number>;
  getAlarm(): Promise<number | null>;
  setAlarm(at: number): Promise<void>;
}

export interface ObjectState {
  storage: ObjectStorage;
}

/** All objects of a class. */
export interface ObjectNamespace {
  idFromName(name: string): unknown;
  get(id: unknown): { fetch(address: string, init?: RequestInit): Promise<Response> };
}

/** The atlas has one object of each class. */
export const theOne = (objects: ObjectNamespace) => objects.get(objects.idFromName("the atlas"));
/** An object is asked by a request; its address says nothing. */
export const INSIDE = "https://atlas.internal/";
