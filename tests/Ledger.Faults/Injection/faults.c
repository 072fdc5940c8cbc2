/*
 * Preloaded before libc, this counts the calls of a program that change a file below one folder or write to its output, and lets one of
 * them go wrong. It is told by the environment:
 *
 *   FAULTS_ROOT   the folder; calls on files elsewhere are not counted
 *   FAULTS_LOG    a file that takes a line "name<TAB>path" for each counted call, or only for the one that was struck
 *   FAULTS_KIND   kill: the program is gone before the call        torn: half of a write is done (any other call whole), then it is gone
 *                 eio: the call fails                              full: it and every later one on a file that needs room has ENOSPC
 *                 half: a write writes  half of what it was given  moment: the program is gone after FAULTS_AT microseconds
 *   FAULTS_AT     at which call, from 1
 *
 * What a program writes through a mapping is not seen; a moment or the calls around it reach that.
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <signal.h>
#include <stdarg.h>
#include <stdatomic.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/sendfile.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/time.h>
#include <sys/uio.h>
#include <time.h>
#include <unistd.h>

enum kind { NONE, KILL, TORN, EIO_ONCE, FULL, HALF_WRITE, MOMENT };
enum needs { NO_ROOM, ROOM };
enum verdict { GO_ON, FAIL, HALF, DIE_AFTER };

static enum kind kind;
static long at;
static atomic_long calls;
static int log_file = -1;
static char root[PATH_MAX];
static size_t root_length;
static char output[PATH_MAX], errors[PATH_MAX];

static void path_of(int file, char *path)
{
    char link[64];
    snprintf(link, sizeof link, "/proc/self/fd/%d", file);
    ssize_t length = syscall(SYS_readlink, link, path, PATH_MAX - 1);
    path[length < 0 ? 0 : length] = 0;
}

static void die(void)
{
    syscall(SYS_kill, getpid(), SIGKILL);
    for (;;)
        pause();
}

static void after(long microseconds)
{
    struct sigevent event = { .sigev_notify = SIGEV_SIGNAL, .sigev_signo = SIGKILL };
    struct itimerspec moment = { .it_value = { microseconds / 1000000, microseconds % 1000000 * 1000 + 1 } };
    timer_t timer;
    if (timer_create(CLOCK_MONOTONIC, &event, &timer) != 0 || timer_settime(timer, 0, &moment, NULL) != 0)
        abort();
}

__attribute__((constructor)) static void begin(void)
{
    static const char *const kinds[] = { "none", "kill", "torn", "eio", "full", "half", "moment" };
    const char *folder = getenv("FAULTS_ROOT"), *log = getenv("FAULTS_LOG"), *name = getenv("FAULTS_KIND"), *when = getenv("FAULTS_AT");
    if (folder == NULL)
        return;
    snprintf(root, sizeof root, "%s/", folder);
    root_length = strlen(root);
    for (int i = 0; name != NULL && i < (int)(sizeof kinds / sizeof *kinds); i++)
        if (strcmp(name, kinds[i]) == 0)
            kind = i;
    at = when == NULL ? 0 : atol(when);
    path_of(1, output);
    path_of(2, errors);
    if (log != NULL)
        log_file = syscall(SYS_openat, AT_FDCWD, log, O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0600);
    unsetenv("LD_PRELOAD"); /* a program that this one starts is not counted */
    if (kind == MOMENT)
        after(at);
}

static void note(const char *name, const char *path)
{
    char line[PATH_MAX + 64];
    int length = snprintf(line, sizeof line, "%s\t%s\n", name, path);
    if (log_file >= 0)
        syscall(SYS_write, log_file, line, length);
}

static int is_counted(const char *path)
{
    return root_length > 0 && path != NULL && *path != 0
        && (strncmp(path, root, root_length) == 0 || strcmp(path, output) == 0 || strcmp(path, errors) == 0);
}

/* Counts a call and says what becomes of it. */
static enum verdict count(const char *name, const char *path, enum needs needs)
{
    if (!is_counted(path))
        return GO_ON;
    int is_file = strncmp(path, root, root_length) == 0;
    if (!is_file)
        path = strcmp(path, output) == 0 ? "the output" : "the messages";
    long now = ++calls;
    if (kind == NONE)
        note(name, path);
    if (kind == NONE || kind == MOMENT || (now != at && !(kind == FULL && now > at && needs == ROOM && is_file)))
        return GO_ON;
    note(name, path);
    switch (kind) {
    case KILL: die(); return GO_ON;
    case EIO_ONCE: errno = EIO; return FAIL;
    case FULL: errno = ENOSPC; return FAIL;
    case HALF_WRITE: return HALF;
    default: return DIE_AFTER;
    }
}

#define REAL(name) ({ static __typeof__(&name) real; if (real == NULL) real = (__typeof__(&name))dlsym(RTLD_NEXT, #name); real; })

/* A call that is made whole or not at all. */
#define WHOLE(what, path, needs, failed, call) \
    do { \
        enum verdict verdict = count(what, path, needs); \
        if (verdict == FAIL) \
            return failed; \
        __typeof__(call) result = call; \
        if (verdict == DIE_AFTER) \
            die(); \
        return result; \
    } while (0)

/* A call that writes some bytes, and may write half of them. */
#define BYTES(what, path, size, call) \
    do { \
        enum verdict verdict = count(what, path, ROOM); \
        if (verdict == FAIL) \
            return -1; \
        if (verdict != GO_ON) \
            size = size > 1 ? size / 2 : size; \
        __typeof__(call) result = call; \
        if (verdict == DIE_AFTER) \
            die(); \
        return result; \
    } while (0)

#define OF(file) char path[PATH_MAX]; path_of(file, path)

/* Opening counts where it may make a file or cut it to nothing. */
#define OPENS(name, parameters, ...) \
    int name parameters \
    { \
        mode_t mode = 0; \
        if (flags & (O_CREAT | O_TMPFILE)) { \
            va_list more; \
            va_start(more, flags); \
            mode = va_arg(more, mode_t); \
            va_end(more); \
        } \
        if (!(flags & (O_CREAT | O_TRUNC))) \
            return REAL(name)(__VA_ARGS__, mode); \
        WHOLE(flags & O_CREAT ? "create" : "cut", path, flags & O_CREAT ? ROOM : NO_ROOM, -1, REAL(name)(__VA_ARGS__, mode)); \
    }

OPENS(open, (const char *path, int flags, ...), path, flags)
OPENS(open64, (const char *path, int flags, ...), path, flags)
OPENS(openat, (int folder, const char *path, int flags, ...), folder, path, flags)
OPENS(openat64, (int folder, const char *path, int flags, ...), folder, path, flags)

ssize_t write(int file, const void *bytes, size_t size)
{
    OF(file);
    BYTES("write", path, size, REAL(write)(file, bytes, size));
}

ssize_t pwrite(int file, const void *bytes, size_t size, off_t offset)
{
    OF(file);
    BYTES("write", path, size, REAL(pwrite)(file, bytes, size, offset));
}

ssize_t pwrite64(int file, const void *bytes, size_t size, off64_t offset)
{
    OF(file);
    BYTES("write", path, size, REAL(pwrite64)(file, bytes, size, offset));
}

/* Half of several pieces is the first half of the pieces, or half of the only one. */
static ssize_t half_of(int file, const struct iovec *pieces, int number)
{
    return number > 1 ? syscall(SYS_writev, file, pieces, number / 2)
        : syscall(SYS_write, file, pieces->iov_base, pieces->iov_len > 1 ? pieces->iov_len / 2 : pieces->iov_len);
}

ssize_t writev(int file, const struct iovec *pieces, int number)
{
    OF(file);
    enum verdict verdict = count("write", path, ROOM);
    if (verdict == FAIL)
        return -1;
    ssize_t result = verdict == GO_ON ? REAL(writev)(file, pieces, number) : half_of(file, pieces, number);
    if (verdict == DIE_AFTER)
        die();
    return result;
}

ssize_t sendfile64(int to, int from, off64_t *offset, size_t size)
{
    OF(to);
    BYTES("copy", path, size, REAL(sendfile64)(to, from, offset, size));
}

ssize_t copy_file_range(int from, off64_t *from_offset, int to, off64_t *to_offset, size_t size, unsigned flags)
{
    OF(to);
    BYTES("copy", path, size, REAL(copy_file_range)(from, from_offset, to, to_offset, size, flags));
}

int fsync(int file)
{
    OF(file);
    WHOLE("sync", path, NO_ROOM, -1, REAL(fsync)(file));
}

int fdatasync(int file)
{
    OF(file);
    WHOLE("sync", path, NO_ROOM, -1, REAL(fdatasync)(file));
}

int ftruncate(int file, off_t size)
{
    OF(file);
    WHOLE("cut", path, NO_ROOM, -1, REAL(ftruncate)(file, size));
}

int ftruncate64(int file, off64_t size)
{
    OF(file);
    WHOLE("cut", path, NO_ROOM, -1, REAL(ftruncate64)(file, size));
}

int fallocate64(int file, int mode, off64_t offset, off64_t size)
{
    OF(file);
    WHOLE("reserve", path, ROOM, -1, REAL(fallocate64)(file, mode, offset, size));
}

int posix_fallocate64(int file, off64_t offset, off64_t size)
{
    OF(file);
    WHOLE("reserve", path, ROOM, errno, REAL(posix_fallocate64)(file, offset, size));
}

int fchmod(int file, mode_t mode)
{
    OF(file);
    WHOLE("rights", path, NO_ROOM, -1, REAL(fchmod)(file, mode));
}

int chmod(const char *path, mode_t mode)
{
    WHOLE("rights", path, NO_ROOM, -1, REAL(chmod)(path, mode));
}

int rename(const char *from, const char *path)
{
    WHOLE("rename", path, ROOM, -1, REAL(rename)(from, path));
}

int renameat2(int from_folder, const char *from, int folder, const char *path, unsigned flags)
{
    WHOLE("rename", path, ROOM, -1, REAL(renameat2)(from_folder, from, folder, path, flags));
}

int link(const char *from, const char *path)
{
    WHOLE("link", path, ROOM, -1, REAL(link)(from, path));
}

int linkat(int from_folder, const char *from, int folder, const char *path, int flags)
{
    WHOLE("link", path, ROOM, -1, REAL(linkat)(from_folder, from, folder, path, flags));
}

int unlink(const char *path)
{
    WHOLE("unlink", path, NO_ROOM, -1, REAL(unlink)(path));
}

int rmdir(const char *path)
{
    WHOLE("unlink", path, NO_ROOM, -1, REAL(rmdir)(path));
}

int mkdir(const char *path, mode_t mode)
{
    WHOLE("folder", path, ROOM, -1, REAL(mkdir)(path, mode));
}

int mkstemps64(char *path, int suffix)
{
    WHOLE("create", path, ROOM, -1, REAL(mkstemps64)(path, suffix));
}
