/**
 * What this device keeps for the academy's pages. Asking for the store itself can be refused by a browser, so that it is
 * asked for with each use: whoever uses it is ready for an error then.
 */
export const deviceStore: Pick<Storage, "getItem" | "setItem" | "removeItem"> = {
  getItem: (place) => window.localStorage.getItem(place),
  setItem: (place, text) => window.localStorage.setItem(place, text),
  removeItem: (place) => window.localStorage.removeItem(place),
};
