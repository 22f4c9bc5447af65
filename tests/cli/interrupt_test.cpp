// SPDX-License-Identifier: MIT
// Ctrl-C and the clock, as a search meets them.
#include "cli/progress.hpp"
#include "cli/search_watch.hpp"

#include <doctest/doctest.h>

#include <csignal>
#include <string>

using namespace pelt;
using namespace pelt::cli;

namespace {

const nest::Progress half_way{14'210'400, 13'889'999, 0.5};

ProgressLine no_line() {
    return {ProgressLine::Sink{}, 80};
}

bool default_handler_is_set() {
    struct sigaction now {};
    return ::sigaction(SIGINT, nullptr, &now) == 0 && now.sa_handler == SIG_DFL;
}

} // namespace

TEST_CASE("the first Ctrl-C asks the search to stop, the second would end the program") {
    SearchWatch watch(std::nullopt, no_line());
    CHECK(watch.go_on(half_way));
    std::raise(SIGINT);
    CHECK_FALSE(watch.go_on(half_way));
    CHECK(watch.interrupted());
    CHECK(watch.stopped_by() == SearchWatch::StoppedBy::interrupt);
    CHECK(default_handler_is_set());
}

TEST_CASE("an earlier Ctrl-C does not stop a later search, and the handler goes with its watch") {
    {
        SearchWatch watch(std::nullopt, no_line());
        CHECK(watch.go_on(half_way));
        CHECK_FALSE(default_handler_is_set());
    }
    CHECK(default_handler_is_set());
}

TEST_CASE("SIGINT that was ignored stays ignored") {
    std::signal(SIGINT, SIG_IGN);
    {
        SearchWatch watch(std::nullopt, no_line());
        std::raise(SIGINT);
        CHECK(watch.go_on(half_way));
    }
    struct sigaction now {};
    CHECK(::sigaction(SIGINT, nullptr, &now) == 0);
    const bool still_ignored = now.sa_handler == SIG_IGN;
    CHECK(still_ignored);
    std::signal(SIGINT, SIG_DFL);
}

TEST_CASE("time that is up stops the search and stays up") {
    SearchWatch watch(1e-9, no_line());
    CHECK_FALSE(watch.go_on(half_way));
    CHECK_FALSE(watch.go_on(half_way));
    CHECK(watch.stopped_by() == SearchWatch::StoppedBy::time);
    SearchWatch endless(86'400, no_line());
    CHECK(endless.go_on(half_way));
    CHECK(endless.stopped_by() == SearchWatch::StoppedBy::nothing);
}

TEST_CASE("progress rounds lengths up and bounds down") {
    CHECK(progress_text(half_way, {}, 80) == "50 %; 14.22 m so far, 13.88 m at least");
    CHECK(progress_text({0, 0, 0}, {}, 80) == "0 %");
    CHECK(progress_text({1'000'000, 0, 2}, {}, 80) == "100 %; 1.00 m so far");
    CHECK(progress_text(half_way, {}, 9) == "50 %; 14.");
    nest::Progress told = half_way;
    told.doing = "laying out";
    CHECK(progress_text(told, 3.2, 80) ==
          "laying out: 50 %, about 4 s left; 14.22 m so far, 13.88 m at least");
}

TEST_CASE("the progress line waits, is not drawn too often, and goes away") {
    std::string shown;
    int writes = 0;
    ProgressLine line([&](std::string_view text) { shown = text, ++writes; }, 80);
    line.erase();
    line.show(half_way, 0.2);
    CHECK(writes == 0);
    line.show(half_way, 0.51);
    line.show(half_way, 0.55);
    CHECK(writes == 1);
    line.show(half_way, 0.62);
    CHECK(writes == 2);
    CHECK(shown.front() == '\r');
    CHECK(shown.find("about 1 s left") != std::string::npos);
    nest::Progress next = half_way;
    next.share = 0.25; // another search, begun at 0.8 s
    line.show(next, 0.8);
    line.show(next, 1.0);
    CHECK(shown.find("about 1 s left") != std::string::npos); // 0.2 s for a quarter
    line.erase();
    CHECK(shown == "\r\x1b[K");
    line.erase();
    CHECK(writes == 5);
}
