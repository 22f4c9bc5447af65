// SPDX-License-Identifier: MIT
// Files of every kind but vehicles: read, or every fault of them told in a sentence.
#include "read/context.hpp"
#include "read/log.hpp"
#include "sources.hpp"

namespace pelt::fuzzed {
void film(std::string_view bytes) {
    expect_told(read::film(source(bytes)));
}

void stock(std::string_view bytes) {
    expect_told(read::stock(source(bytes)));
}

void shop(std::string_view bytes) {
    expect_told(read::shop(source(bytes)));
}

namespace {

/// A job that is wrong spoils no other, so the file has a value all the same.
void examine(const read::Reading<Jobs>& reading) {
    expect_sentences(reading.faults);
    if (!reading.value)
        return;
    for (const ReadJob& job : reading.value->jobs) {
        expect_sentences(job.faults);
        expect(job.job.has_value() == !stops(job.faults), "a job, or what is wrong with it");
    }
}

} // namespace

void jobs(std::string_view bytes) {
    examine(read::jobs(source(bytes)));
}

void jobs_table(std::string_view bytes) {
    examine(read::jobs(table_source(bytes)));
}

void log(std::string_view bytes) {
    read::Context context;
    static_cast<void>(read::log_of(table_source(bytes), context));
    Faults faults;
    std::size_t unlisted = 0;
    std::move(context).finish(faults, unlisted);
    expect_sentences(faults);
}

} // namespace pelt::fuzzed
