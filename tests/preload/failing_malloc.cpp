// SPDX-License-Identifier: MIT
// Preloaded into a program: memory that runs out. Allocation number FAIL_AT of those made since
// main() began is refused, and with FAIL_ON all after it. What libraries ask for before main() is
// none of the program's; GLib then ends the process by itself. At the end FAIL_COUNT has the number
// of all written to standard error.
#include <dlfcn.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>
#include <cstddef>
#include <cstdio>
#include <cstdlib>

extern "C" {
void* __libc_malloc(std::size_t);
void* __libc_calloc(std::size_t, std::size_t);
void* __libc_realloc(void*, std::size_t);
void* __libc_memalign(std::size_t, std::size_t);
}

namespace {

std::atomic<bool> counts{false};
std::atomic<long> counted{0};
long fails_at = 0;
bool goes_on = false;
int (*real_main)(int, char**, char**) = nullptr;

bool fails() {
    if (!counts)
        return false;
    const long number = ++counted;
    const bool refused = fails_at > 0 && (goes_on ? number >= fails_at : number == fails_at);
    if (refused)
        errno = ENOMEM;
    return refused;
}

int counting_main(int argc, char** argv, char** environment) {
    const char* at = std::getenv("FAIL_AT");
    fails_at = at != nullptr ? std::strtol(at, nullptr, 10) : 0;
    goes_on = std::getenv("FAIL_ON") != nullptr;
    counts = true;
    const int status = real_main(argc, argv, environment);
    counts = false;
    if (std::getenv("FAIL_COUNT") != nullptr) {
        char text[32];
        const int length = std::snprintf(text, sizeof text, "allocations %ld\n", counted.load());
        if (::write(STDERR_FILENO, text, static_cast<std::size_t>(length)) < 0)
            return 99;
    }
    return status;
}

} // namespace

extern "C" {

void* malloc(std::size_t size) {
    return fails() ? nullptr : __libc_malloc(size);
}
void* calloc(std::size_t count, std::size_t size) {
    return fails() ? nullptr : __libc_calloc(count, size);
}
void* realloc(void* memory, std::size_t size) {
    return fails() ? nullptr : __libc_realloc(memory, size);
}
void* aligned_alloc(std::size_t alignment, std::size_t size) {
    return fails() ? nullptr : __libc_memalign(alignment, size);
}
int posix_memalign(void** memory, std::size_t alignment, std::size_t size) {
    if (fails())
        return ENOMEM;
    *memory = __libc_memalign(alignment, size);
    return *memory != nullptr ? 0 : ENOMEM;
}

/// The start of every program that is linked with glibc.
int __libc_start_main(int (*main)(int, char**, char**), int argc, char** argv, void (*init)(),
                      void (*fini)(), void (*rtld_fini)(), void* stack_end) {
    using Start = int (*)(int (*)(int, char**, char**), int, char**, void (*)(), void (*)(),
                          void (*)(), void*);
    real_main = main;
    const auto start = reinterpret_cast<Start>(::dlsym(RTLD_NEXT, "__libc_start_main"));
    return start(counting_main, argc, argv, init, fini, rtld_fini, stack_end);
}
}
