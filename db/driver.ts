import NodeApiDriver from "better-sqlite3";
import DriverForNode20 from "better-sqlite3-node20";

const NODE_MAJOR = Number(process.versions.node.split(".")[0]);

/**
 * The database driver that this Node can run. From Node 22 on it is the one that speaks Node-API: nothing is compiled, and
 * headers of Node 24.19 and later make its predecessor abort. The predecessor, the same by its calls, serves Node 20, under
 * which the newer one does not run. Both load nothing native until a database is opened.
 */
export const Sqlite = NODE_MAJOR >= 22 ? NodeApiDriver : DriverForNode20;

/** One open connection. */
export type SqliteConnection = NodeApiDriver.Database;
