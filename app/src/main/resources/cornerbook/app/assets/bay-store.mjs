// What the tablet keeps: entries that are not in the book yet, and the sheets of visits. It survives reload and restart.
const NAME = "cornerbook-bay";

/** @type {Promise<IDBDatabase> | undefined} */
let opening;

function open() {
  opening ??= new Promise((resolve, reject) => {
    const request = indexedDB.open(NAME, 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore("outbox", { keyPath: "seq", autoIncrement: true });
      request.result.createObjectStore("sheets", { keyPath: "visit" });
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  return opening;
}

/**
 * Resolves when the change is on the disk of the tablet, not only in its memory.
 *
 * @template T
 * @param {keyof bay.Stores} store
 * @param {(objects: IDBObjectStore) => IDBRequest<T>} work
 * @returns {Promise<T>}
 */
async function change(store, work) {
  const database = await open();
  return new Promise((resolve, reject) => {
    const transaction = database.transaction(store, "readwrite", { durability: "strict" });
    const request = work(transaction.objectStore(store));
    transaction.oncomplete = () => resolve(request.result);
    transaction.onabort = () => reject(transaction.error);
  });
}

/**
 * @template T
 * @param {keyof bay.Stores} store
 * @param {(objects: IDBObjectStore) => IDBRequest<T>} work
 * @returns {Promise<T>}
 */
async function read(store, work) {
  const database = await open();
  return new Promise((resolve, reject) => {
    const request = work(database.transaction(store).objectStore(store));
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

/**
 * Keeps a value; gives its key.
 *
 * @type {bay.Store["put"]}
 */
export const put = (store, value) => change(store, (objects) => objects.put(value));
/** @type {bay.Store["remove"]} */
export const remove = (store, key) => change(store, (objects) => objects.delete(key));
/** @type {bay.Store["get"]} */
export const get = (store, key) => read(store, (objects) => objects.get(key));
/** @type {bay.Store["all"]} */
export const all = (store) => read(store, (objects) => objects.getAll());
