// SPDX-License-Identifier: MIT
#include "failing_new.hpp"

#include <cstddef>
#include <cstdlib>
#include <new>

namespace {

std::atomic<long> counted = 0;
std::atomic<long> fails_at = 0;
std::atomic<bool> fails_once = true;

bool fails_now() {
    const long number = ++counted;
    const long at = fails_at;
    return at > 0 && (fails_once ? number == at : number >= at);
}

} // namespace

// Libraries that are linked take these too.
void* operator new(std::size_t size) {
    void* const memory = fails_now() ? nullptr : std::malloc(size > 0 ? size : 1);
    if (memory == nullptr)
        throw std::bad_alloc();
    return memory;
}
void* operator new[](std::size_t size) {
    return operator new(size);
}
void operator delete(void* memory) noexcept {
    std::free(memory);
}
void operator delete[](void* memory) noexcept {
    std::free(memory);
}
void operator delete(void* memory, std::size_t) noexcept {
    std::free(memory);
}
void operator delete[](void* memory, std::size_t) noexcept {
    std::free(memory);
}

namespace pelt::test {

FailingNew::FailingNew(long at, bool once) {
    fails_once = once;
    counted = 0;
    fails_at = at;
}

FailingNew::~FailingNew() {
    fails_at = 0;
}

long FailingNew::count() const {
    return counted;
}

} // namespace pelt::test
