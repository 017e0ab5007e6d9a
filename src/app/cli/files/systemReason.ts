/** The system's error codes in plain words. */
const reasons: Record<string, string> = {
  EACCES: 'no permission',
  EPERM: 'no permission',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the quota on this disk is used up',
  EFBIG: 'the file is larger than is allowed here',
  ENOENT: 'there is no such file or folder',
  ENOTDIR: 'a part of the path is a file, not a folder',
  EISDIR: 'it is a folder',
  ENAMETOOLONG: 'the name is too long',
  EMFILE: 'too many files are open',
  EBUSY: 'another program is using it',
  EIO: 'the disk reports an error',
  EEXIST: 'a file of that name already exists',
};

/** Why the system refused, without paths or numbers of its own. */
export function systemReason(fault: unknown): string {
  const code = typeof fault === 'object' && fault !== null && 'code' in fault ? String(fault.code) : '';
  return (
    reasons[code] ??
    (code === '' ? String(fault instanceof Error ? fault.message : fault) : `the system reports ${code}`)
  );
}
