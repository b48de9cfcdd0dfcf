/**
 * Copies of all that is kept, each one file, made while the board goes on; and such a copy put back. What is in one and
 * how damage is told: {@link benchpace.store.backup.BackupFile}. Start at {@link benchpace.store.backup.Backup} and
 * {@link benchpace.store.backup.Restore}.
 */
package benchpace.store.backup;
