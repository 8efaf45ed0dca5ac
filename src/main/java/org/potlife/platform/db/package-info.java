/**
 * The PostgreSQL that a newcomer needs not install.
 *
 * <p>Everything lies in one folder (POTLIFE_DATA, default ~/.potlife):
 *
 * <pre>
 *   lock          held by the running instance
 *   database/     the cluster
 *   initialised   the cluster is complete; without it database/ is a half-done initdb
 *   password      of the database's superuser, readable by its owner only
 *   binaries/     the server's programs, unpacked
 *   database.log  what the server says
 * </pre>
 *
 * <p>The server must outlive the application and never the process: it is closed by a shutdown hook
 * that waits for the application, by a watchdog when the process was killed, and by the next start
 * when both failed.
 */
package org.potlife.platform.db;
