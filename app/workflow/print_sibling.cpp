// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/print_sibling.h"

#include "reports/text/report_json.h"

#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <csignal>
#include <cstring>

extern char** environ;

namespace evenfall::workflow {
namespace {

/// Both ends of a pipe, closed at the end of the scope.
struct Pipe {
    std::array<int, 2> ends{-1, -1};
    Pipe() {
        // Close-on-exec: a program started by another thread must not keep the pipe open.
        if (::pipe2(ends.data(), O_CLOEXEC) != 0) {
            throw PrintError({phrase("workflow", "no pipe: %1"), std::strerror(errno)});
        }
    }
    ~Pipe() {
        shut(0);
        shut(1);
    }
    Pipe(const Pipe&) = delete;
    Pipe& operator=(const Pipe&) = delete;
    void shut(std::size_t end) {
        if (ends[end] >= 0) ::close(ends[end]);
        ends[end] = -1;
    }
};

/// Writes all of it. False when the reader went away, which its exit status will explain.
bool feed(int to, const std::string& text) {
    std::size_t done = 0;
    while (done < text.size()) {
        const ssize_t n = ::write(to, text.data() + done, text.size() - done);
        if (n < 0 && errno == EINTR) continue;
        if (n <= 0) return false;
        done += static_cast<std::size_t>(n);
    }
    return true;
}

/// A reader that ends early must not end this program with SIGPIPE.
class PipeSignalOff {
  public:
    PipeSignalOff() {
        struct sigaction ignore {};
        ignore.sa_handler = SIG_IGN;
        ::sigaction(SIGPIPE, &ignore, &before_);
    }
    ~PipeSignalOff() { ::sigaction(SIGPIPE, &before_, nullptr); }
    PipeSignalOff(const PipeSignalOff&) = delete;
    PipeSignalOff& operator=(const PipeSignalOff&) = delete;

  private:
    struct sigaction before_ {};
};

pid_t start(const PrintOrder& order, int input) {
    const std::string program = order.program.string(), out = order.out.string();
    std::array<const char*, 9> words{program.c_str(), "-",       "--format", order.format.c_str(),
                                     "--paper",       order.paper.c_str(), "--out", out.c_str(),
                                     nullptr};
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_adddup2(&actions, input, STDIN_FILENO);
    pid_t child = 0;
    const int error = posix_spawn(&child, program.c_str(), &actions, nullptr,
                                  const_cast<char* const*>(words.data()), environ);
    posix_spawn_file_actions_destroy(&actions);
    if (error != 0) throw PrintError({phrase("workflow", "cannot run %1: %2"), program, std::strerror(error)});
    return child;
}

}  // namespace

std::filesystem::path print_program() {
    std::error_code error;
    const auto self = std::filesystem::read_symlink("/proc/self/exe", error);
    if (error) throw PrintError({phrase("workflow", "cannot tell where this program lies: %1"), error.message()});
    const auto program = self.parent_path() / "evenfall-print";
    if (!std::filesystem::exists(program)) {
        throw PrintError({phrase("workflow", "PDF, PNG and SVG are drawn by evenfall-print, which is not at %1; "
                                             "install it beside this program"),
                          program.string()});
    }
    return program;
}

namespace {

/// Starts the printing program, feeds it `text` and waits for its end.
void run(const std::string& text, const PrintOrder& order) {
    const PipeSignalOff guard;
    Pipe pipe;
    const pid_t child = start(order, pipe.ends[0]);
    pipe.shut(0);
    const bool all = feed(pipe.ends[1], text);
    pipe.shut(1);
    int status = 0;
    while (::waitpid(child, &status, 0) < 0 && errno == EINTR) {
    }
    if (!WIFEXITED(status)) {
        throw PrintError({phrase("workflow", "evenfall-print was ended by signal %1"), WTERMSIG(status)});
    }
    if (WEXITSTATUS(status) != 0 || !all) {
        throw PrintError({phrase("workflow", "evenfall-print could not draw %1, exit status %2"), order.out.string(),
                          WEXITSTATUS(status)});
    }
}

}  // namespace

void print(const reports::Report& report, const PrintOrder& order) { run(reports::write_json(report), order); }

void print_sheet(const std::string& svg, const std::filesystem::path& program, const std::filesystem::path& out) {
    run(svg, {program.empty() ? print_program() : program, "sheet", "letter", out});
}

}  // namespace evenfall::workflow
