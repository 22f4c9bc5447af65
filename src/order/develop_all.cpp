// SPDX-License-Identifier: MIT
#include "order/develop_all.hpp"

#include "develop/develop.hpp"

#include <algorithm>
#include <atomic>
#include <exception>
#include <thread>
#include <variant>
#include <vector>

namespace pelt::order {
namespace {

struct Task {
    const Panel* panel;
    DevelopedPanel* out;
    Faults faults = {};
    std::exception_ptr failure = nullptr;
};

void run(Task& task, std::optional<double> film_percent) {
    try {
        *task.out = develop::develop(*task.panel, task.faults, film_percent);
    } catch (...) {
        task.failure = std::current_exception();
    }
}

} // namespace

void develop_all(Job& job, int threads, Faults& faults) {
    std::vector<Task> tasks;
    job.developed.resize(job.vehicles.size());
    std::size_t scans = 0;
    for (std::size_t v = 0; v < job.vehicles.size(); ++v) {
        job.developed[v].resize(job.vehicles[v].panels.size());
        for (std::size_t p = 0; p < job.vehicles[v].panels.size(); ++p) {
            tasks.push_back({&job.vehicles[v].panels[p], &job.developed[v][p]});
            scans += std::holds_alternative<SurfaceForm>(tasks.back().panel->form) ? 1 : 0;
        }
    }
    const std::optional<double> film_percent = job.film.stretch_panel_percent;
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
        for (std::size_t i = next++; i < tasks.size(); i = next++)
            run(tasks[i], film_percent);
    };
    std::vector<std::thread> others;
    const std::size_t wanted = std::min(static_cast<std::size_t>(std::max(threads, 1)), scans);
    for (std::size_t i = 1; i < wanted; ++i)
        others.emplace_back(work);
    work();
    for (std::thread& thread : others)
        thread.join();
    for (Task& task : tasks) {
        if (task.failure)
            std::rethrow_exception(task.failure);
        faults.insert(faults.end(), task.faults.begin(), task.faults.end());
    }
}

} // namespace pelt::order
