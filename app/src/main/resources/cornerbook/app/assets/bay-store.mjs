// What the tablet keeps: entries that are not in the book yet, and the sheets of visits. It survives reload and restart.
const NAME = "cornerbook-bay";

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

// Resolves when the change is on the disk of the tablet, not only in its memory.
async function change(store, work) {
  const database = await open();
  return new Promise((resolve, reject) => {
    const transaction = database.transaction(store, "readwrite", { durability: "strict" });
    const request = work(transaction.objectStore(store));
    transaction.oncomplete = () => resolve(request.result);
    transaction.onabort = () => reject(transaction.error);
  });
}

async function read(store, work) {
  const database = await open();
  return new Promise((resolve, reject) => {
    const request = work(database.transaction(store).objectStore(store));
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

/** Keeps a value; gives its key. */
export const put = (store, value) => change(store, (objects) => objects.put(value));
export const remove = (store, key) => change(store, (objects) => objects.delete(key));
export const get = (store, key) => read(store, (objects) => objects.get(key));
export const all = (store) => read(store, (objects) => objects.getAll());
