// SPDX-License-Identifier: MIT
#include "cli/interrupt.hpp"

#include "cli/statuses.hpp"

#include <atomic>
#include <csignal>
#include <cstdlib>

namespace pelt::cli {
namespace {

// A signal handler can reach nothing but static storage.
std::atomic<bool> interrupt_seen{false};
static_assert(std::atomic<bool>::is_always_lock_free);

extern "C" void note_interrupt(int) {
    interrupt_seen = true;
}

bool interrupts_are_ignored() {
    struct sigaction now {};
    return ::sigaction(SIGINT, nullptr, &now) == 0 && now.sa_handler == SIG_IGN;
}

void set_handler(void (*handler)(int), int flags) {
    struct sigaction action {};
    action.sa_handler = handler;
    action.sa_flags = flags;
    ::sigemptyset(&action.sa_mask);
    ::sigaction(SIGINT, &action, nullptr);
}

} // namespace

InterruptWatch::InterruptWatch() {
    interrupt_seen = false;
    if (!interrupts_are_ignored())
        set_handler(note_interrupt, static_cast<int>(SA_RESETHAND));
}

InterruptWatch::~InterruptWatch() {
    if (!interrupts_are_ignored())
        set_handler(SIG_DFL, 0);
}

bool InterruptWatch::interrupted() const {
    return interrupt_seen;
}

void die_by_interrupt() {
    set_handler(SIG_DFL, 0);
    std::raise(SIGINT);
    std::_Exit(status::stopped); // where SIGINT is blocked
}

} // namespace pelt::cli
