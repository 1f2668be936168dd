// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/review_batch.h"

#include "app/workflow/error_sentence.h"
#include "app/workflow/filing.h"
#include "core/exchange/filing_file.h"
#include "core/input_error.h"
#include "core/review/application.h"
#include "core/store/application_store.h"
#include "core/store/filing_store.h"

#include <algorithm>
#include <atomic>
#include <map>
#include <mutex>
#include <system_error>
#include <thread>

namespace evenfall::workflow {
namespace {

using review::Review;

/// What the batch remembers of a filing besides its review, to find what two of them share.
struct Trace {
    std::vector<review::Fingerprint> prints;   ///< keys replaced by their digests
};

/// Folders are opened one level deep; links are not followed.
std::vector<std::filesystem::path> listed(const std::vector<std::filesystem::path>& given) {
    std::vector<std::filesystem::path> files;
    for (const auto& path : given) {
        std::error_code error;
        if (!std::filesystem::is_directory(path, error)) {
            files.push_back(path);
            continue;
        }
        std::vector<std::filesystem::path> inside;
        for (const auto& entry : std::filesystem::directory_iterator(path, error)) {
            if (entry.path().extension() == ".zip") inside.push_back(entry.path());
        }
        std::sort(inside.begin(), inside.end());
        files.insert(files.end(), inside.begin(), inside.end());
    }
    if (files.empty()) throw InputError(phrase("workflow", "no filing"), phrase("workflow", "a zip file or a folder with some"));
    return files;
}

void review_one(const std::filesystem::path& file, const ReviewOrder& order, const review::RebateProgram* program,
                std::optional<double> budget_left, BatchItem& item, Trace& trace) {
    item.file = file.filename().string();
    try {
        const auto opened = exchange::open_filing(file, order.limits);
        item.review = review::review_filing(opened.filing, opened.sha256, opened.is_signed, program, budget_left);
        trace.prints = traced_fingerprints(opened.filing);
    } catch (const std::exception& e) {
        // Whatever it is, it is about this one file: a refusal with its place, or no memory for it.
        item.review.reset();
        item.refused = error_sentence(e);
    }
}

void review_together(const std::vector<std::filesystem::path>& files, const ReviewOrder& order,
                     const review::RebateProgram* program, std::optional<double> budget_left, Batch& batch,
                     std::vector<Trace>& traces) {
    std::vector<review::Filing> filings;
    std::string names;
    bool is_signed = true;
    std::string sha256;
    for (const auto& file : files) {
        auto opened = exchange::open_filing(file, order.limits);
        names += (names.empty() ? "" : " + ") + file.filename().string();
        sha256 += (sha256.empty() ? "" : " + ") + opened.sha256;
        is_signed = is_signed && opened.is_signed;
        filings.push_back(std::move(opened.filing));
    }
    const review::Filing all = review::together(filings);
    batch.items.push_back({names, review::review_filing(all, sha256, is_signed, program, budget_left), {}});
    traces.push_back({traced_fingerprints(all)});
}

bool same_case(const Review& a, const Review& b) {
    return a.filing == b.filing || (!a.application.empty() && a.application == b.application);
}

/// Asks about every fingerprint that stands in two cases of the batch or in an earlier filing.
void ask_about_shared(Batch& batch, const std::vector<Trace>& traces, const store::Book* book) {
    std::map<std::pair<std::string, std::string>, std::vector<std::size_t>> seen;
    for (std::size_t i = 0; i < traces.size(); ++i) {
        for (const auto& p : traces[i].prints) seen[{p.kind, p.key}].push_back(i);
    }
    for (std::size_t i = 0; i < traces.size(); ++i) {
        if (!batch.items[i].review) continue;
        Review& mine = *batch.items[i].review;
        for (const auto& p : traces[i].prints) {
            for (const std::size_t other : seen[{p.kind, p.key}]) {
                if (other == i || same_case(mine, *batch.items[other].review)) continue;
                mine.questions.push_back(review::shared_with(p, batch.items[other].review->filing));
                break;
            }
            if (book != nullptr) ask_about_earlier(mine, {p}, *book);
        }
    }
}

double asked_for(const BatchItem& item) {
    return item.review && item.review->payment ? item.review->payment->total : 0.0;
}

void put_in_order(Batch& batch) {
    batch.order.resize(batch.items.size());
    for (std::size_t i = 0; i < batch.order.size(); ++i) batch.order[i] = i;
    const auto weight = [&](std::size_t i) {
        const BatchItem& item = batch.items[i];
        if (!item.review) return -1.0;
        return item.review->risk() * std::max(1.0, asked_for(item));
    };
    std::stable_sort(batch.order.begin(), batch.order.end(), [&](std::size_t a, std::size_t b) {
        if (weight(a) != weight(b)) return weight(a) > weight(b);
        return asked_for(batch.items[a]) > asked_for(batch.items[b]);
    });
}

void add_up(Batch& batch) {
    for (const BatchItem& item : batch.items) {
        if (!item.review) {
            ++batch.refused;
            continue;
        }
        switch (item.review->decision) {
            case review::Decision::approve:
                ++batch.approve;
                batch.money += asked_for(item);
                break;
            case review::Decision::decline: ++batch.decline; break;
            case review::Decision::send_more: ++batch.send_more; break;
            case review::Decision::none: break;
        }
    }
}

}  // namespace

std::string note_of(review::Decision decision) {
    switch (decision) {
        case review::Decision::approve: return std::string(phrase("Core", "Review: approve.").english());
        case review::Decision::decline: return std::string(phrase("Core", "Review: decline.").english());
        case review::Decision::send_more: return std::string(phrase("Core", "Review: send more.").english());
        case review::Decision::none: break;
    }
    return std::string(phrase("Core", "Review: none.").english());
}

std::vector<review::Fingerprint> traced_fingerprints(const review::Filing& filing) {
    auto prints = review::fingerprints(filing);
    const auto keys = fingerprint_keys(filing);
    for (std::size_t i = 0; i < prints.size(); ++i) prints[i].key = keys[i].second;
    return prints;
}

void ask_about_earlier(Review& review, const std::vector<review::Fingerprint>& prints, const store::Book& book) {
    for (const review::Fingerprint& p : prints) {
        for (const auto& [code, sha256] : store::filings_with(book, {p.kind, p.key})) {
            // Filings taken together have their digests joined.
            if (review.sha256.find(sha256) != std::string::npos || code == review.filing) continue;
            review.questions.push_back(review::shared_with(p, code));
            break;
        }
    }
}

review::RebateProgram rebate_named(const std::string& name_or_file) {
    if (!name_or_file.ends_with(".json")) return review::built_in_rebate(name_or_file);
    return review::read_rebate_program(text_of_file(name_or_file), name_or_file);
}

Batch review_batch(const ReviewOrder& order, const store::Book* book, const Progress& progress) {
    const auto files = listed(order.files);
    Batch batch;
    if (!order.program.empty()) batch.program = rebate_named(order.program);
    const review::RebateProgram* program = batch.program ? &*batch.program : nullptr;
    if (program != nullptr && book != nullptr) {
        batch.budget_left = review::budget_left(program->budget, store::applications(*book, program->name));
    }
    std::vector<Trace> traces;
    if (order.together) {
        review_together(files, order, program, batch.budget_left, batch, traces);
    } else {
        batch.items.resize(files.size());
        traces.resize(files.size());
        std::atomic<std::size_t> next{0};
        std::size_t done = 0;
        std::mutex telling;
        const auto work = [&] {
            for (std::size_t i = next++; i < files.size(); i = next++) {
                review_one(files[i], order, program, batch.budget_left, batch.items[i], traces[i]);
                const std::lock_guard lock(telling);
                if (progress) progress(++done);
            }
        };
        const std::size_t threads = std::clamp<std::size_t>(order.threads, 1, files.size());
        std::vector<std::jthread> others;
        for (std::size_t t = 1; t < threads; ++t) others.emplace_back(work);
        work();
        others.clear();  // joins
    }
    ask_about_shared(batch, traces, book);
    put_in_order(batch);
    add_up(batch);
    return batch;
}

std::size_t store_batch(store::Book& book, const Batch& batch, const ReviewOrder& order, const std::string& at,
                        const std::string& who) {
    const auto files = listed(order.files);
    const auto when = calendar::parse_instant(at);
    if (!when) throw InputError(at, phrase("workflow", "an instant such as 2024-06-30T12:00:00Z"));
    std::size_t added = 0;
    store::Transaction transaction(book);
    for (std::size_t i = 0; i < files.size(); ++i) {
        const BatchItem& item = batch.items[order.together ? 0 : i];
        if (!item.review) continue;
        const auto opened = exchange::open_filing(files[i], order.limits);
        if (!store::find_filing(book, opened.sha256)) {
            store::add_filing(book, {opened.filing.code, opened.sha256, store::Direction::received, opened.filing.site.code,
                                     opened.json, opened.filing.signing_key, files[i].filename().string(), at, who},
                              fingerprint_keys(opened.filing));
            ++added;
        }
        const std::string& number = opened.filing.request.application;
        if (number.empty() || !batch.program) continue;
        const review::ApplicationFiling filed{opened.sha256, "both"};
        if (store::find_application(book, number)) {
            store::add_application_filing(book, number, filed, at, who);
            continue;
        }
        const Review& r = *item.review;
        const auto status = r.decision == review::Decision::send_more ? review::Status::incomplete : review::Status::under_review;
        store::add_application(book, {number, opened.filing.applicant.name, opened.filing.site.code, batch.program->name,
                                      batch.program->currency, {filed},
                                      {{*when, who, review::Status::received, "", {}},
                                       {*when, who, status, note_of(r.decision), {}}}});
    }
    transaction.commit();
    return added;
}

}  // namespace evenfall::workflow
